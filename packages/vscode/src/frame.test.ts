import { expect, test } from 'vitest';
import { framed } from './frame.js';

const hash = `sha256-${'A'.repeat(43)}=`;

test('a page without a script may run none', () => {
  const page = framed('<!doctype html><html><head><title>x</title></head><body>x</body></html>');
  expect(page).toContain(`<head><meta http-equiv="Content-Security-Policy" content="default-src 'none';`);
  expect(page).toContain("script-src 'none'");
});

test('a page may run the script that its own policy names, and no other', () => {
  const page = framed(
    `<html><head><meta http-equiv="Content-Security-Policy" content="script-src '${hash}'"></head></html>`,
  );
  expect(page).toContain(`script-src '${hash}'; base-uri`);
  expect(page).not.toContain("'unsafe-inline' script");
});

test('words stand in a page of their own', () => {
  expect(framed('<p>There is no plan.</p>')).toMatch(
    /^<!doctype html>.*<body><p>There is no plan\.<\/p><\/body><\/html>$/,
  );
});
