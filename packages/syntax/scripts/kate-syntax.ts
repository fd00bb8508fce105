import type { LineList } from './line-kinds.js';

/*
 * First colour for Kate, by the first words of lines. Kate finds the language server of a file by the name of its
 * highlighting, so that a file without one has no server there.
 */

/** The style, of those that every theme of Kate has, for the first word of each kind of line. */
const STYLES: readonly (readonly [name: string, style: string, kinds: readonly string[]])[] = [
  ['Block', 'dsKeyword', ['block']],
  ['Step', 'dsFunction', ['step', 'every']],
  ['In and out', 'dsControlFlow', ['in', 'out', 'or', 'check']],
  ['Fact', 'dsAttribute', ['fact']],
];

/** A text as the value of an attribute. */
const escaped = (text: string): string =>
  text.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('>', '&gt;').replaceAll('"', '&quot;');

/** The definition of the highlighting, in the format that Kate publishes (KSyntaxHighlighting, language.xsd). */
export function kateSyntax({ words, figure, wordEnd }: LineList): string {
  const rule = (attribute: string, pattern: string, more = ''): string =>
    `        <RegExpr attribute="${attribute}" context="#stay"${more} String="${escaped(pattern)}"/>`;
  const first = ' firstNonSpace="true" insensitive="true"';
  const opening = STYLES.map(([name, , kinds]) => {
    const chosen = words.filter(({ kind }) => kinds.includes(kind)).map(({ word }) => word.replaceAll(' ', '\\s+'));
    return rule(name, `(?:${chosen.toSorted((a, b) => b.length - a.length).join('|')})${wordEnd}`, first);
  });
  return `<?xml version="1.0" encoding="UTF-8"?>
<!DOCTYPE language>
<!-- Made from lines.json by packages/syntax/scripts/generate.mjs. -->
<language name="Quern" section="Sources" version="1" kateversion="5.0" extensions="*.quern" casesensitive="0" license="MIT">
  <highlighting>
    <contexts>
      <context name="Line" attribute="Normal Text" lineEndContext="#stay">
${rule('Remark', '//.*$', ' firstNonSpace="true"')}
${opening.join('\n')}
${rule('Figure', '\\[[^\\]]*\\]')}
${rule('Figure', `${figure}[^\\s,:=%]*`)}
      </context>
    </contexts>
    <itemDatas>
      <itemData name="Normal Text" defStyleNum="dsNormal"/>
      <itemData name="Remark" defStyleNum="dsComment"/>
      <itemData name="Figure" defStyleNum="dsDecVal"/>
${STYLES.map(([name, style]) => `      <itemData name="${name}" defStyleNum="${style}"/>`).join('\n')}
    </itemDatas>
  </highlighting>
  <general>
    <comments>
      <comment name="singleLine" start="//"/>
    </comments>
  </general>
</language>
`;
}
