/**
 * A page with the policy of a preview: it loads nothing from anywhere, and runs no script but the one whose hash it names
 * itself. A policy of its own stays in force beside this one.
 */
export function framed(page: string): string {
  const hashes = [
    ...new Set([...page.matchAll(/'(sha256-[A-Za-z0-9+/=]{40,48})'/g)].map((found) => `'${found[1] ?? ''}'`)),
  ];
  const scripts = hashes.length === 0 ? "'none'" : hashes.join(' ');
  const policy = `default-src 'none'; style-src 'unsafe-inline'; img-src data:; script-src ${scripts}; base-uri 'none'; form-action 'none'`;
  const meta = `<meta http-equiv="Content-Security-Policy" content="${policy}">`;
  const style = '<style>html{background:#fdfcf9;color:#222}</style>';
  return /<head>/i.test(page)
    ? page.replace(/<head>/i, (head) => `${head}${meta}`)
    : `<!doctype html><html lang="en"><head><meta charset="utf-8">${meta}${style}<title>Quern</title></head><body>${page}</body></html>`;
}
