// A project of somebody else: it has the packed packages in its node_modules and nothing of the workspace. Compiled with
// plain settings, then run. It uses each package once and says what came of it.
import { strict as assert } from 'node:assert';
import { compile, type Host } from '@quern/compiler';
import { createFoodBook } from '@quern/foods';
import { hover, snapshotOf } from '@quern/ide';
import { cardHtml, recipeCard, sheetText } from '@quern/publish';
import { convert, rational, toDecimal } from '@quern/quantity';
import { parseDocument, tidy } from '@quern/syntax';
import { sentence } from '@quern/text';
import { sheet } from '@quern/views';
import { Session } from '@quern/compiler';
import { DeskService } from '@quern/desk';
import { startServer } from '@quern/server';
import { registry } from 'quern';
import rehypeStringify from 'rehype-stringify';
import remarkParse from 'remark-parse';
import remarkQuern from 'remark-quern';
import remarkRehype from 'remark-rehype';
import { unified } from 'unified';

const text =
  'recipe Buns\nmake buns\n  300 g wheat flour\n  210 g water\n  hands 5 min: Mix the flour and the water.\n';
const host: Host = { read: () => undefined, foods: createFoodBook() };

// quantity: a pound is 453.59237 g (NIST Handbook 44, Appendix C).
assert.equal(toDecimal(convert(rational(1), 'lb', 'g'), 5), '453.59237');
// syntax
assert.equal(parseDocument('buns.quern', text).lines.length, 6);
assert.equal(tidy(text).text.replaceAll('\n\n', '\n'), text);
// compiler, views, publish
const compiled = compile('buns.quern', text, host);
const [formula] = compiled.formulas;
assert.ok(formula);
assert.ok(sheetText(sheet(formula)).includes('510 g'));
assert.ok(cardHtml(recipeCard(compiled, formula).value).startsWith('<!doctype html>'));
// text
const [slip] = compile('slip.quern', text.replace('hands', 'hnads'), host).diagnostics;
assert.ok(slip !== undefined && sentence(slip).includes('hnads'));
// ide
const session = new Session(host);
session.set('buns.quern', text);
const snapshot = snapshotOf(session, 'buns.quern');
assert.ok(snapshot && hover(snapshot, text.indexOf('wheat')) !== undefined);
// the others
assert.equal(typeof startServer, 'function');
assert.equal(typeof DeskService, 'function');
assert.ok(registry.some(({ name }) => name === 'check'));
const page = await unified()
  .use(remarkParse)
  .use(remarkQuern)
  .use(remarkRehype)
  .use(rehypeStringify)
  .process(`\`\`\`quern\n${text}\`\`\`\n`);
assert.ok(String(page).includes('Buns'));
console.log('used every package');
