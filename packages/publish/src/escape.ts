/*
 * One function an output. Everything a recipe says was written by somebody, perhaps with ill will; a text goes into an
 * output only through the function of that output, and comes out of it as the same text, never as structure.
 *
 * Left alone: what the text says. Changed: characters that no output may carry (controls, halves of a surrogate pair)
 * become U+FFFD, so that one sees that something stood there, and directional controls are closed where the text ends.
 */

/** Directional embeddings and overrides, ended by U+202C. */
const EMBEDDINGS = /[\u202A\u202B\u202D\u202E]/;
/** Directional isolates, ended by U+2069. */
const ISOLATES = /[\u2066-\u2068]/;
const DIRECTIONAL = /[\u202A-\u202E\u2066-\u2069]/;
const POP_EMBEDDING = '\u202C';
const POP_ISOLATE = '\u2069';
const FIRST_STRONG_ISOLATE = '\u2068';

/**
 * Closes directional controls inside the text that opened them. A text with such controls is set in an isolate of its
 * own; a closing mark without an opening one is dropped, for it would close what stands around the text.
 * Source of the rule: Unicode Standard Annex 9, sections 2.1 to 2.7 and 3.3.2.
 */
export function isolateDirections(text: string): string {
  if (!DIRECTIONAL.test(text)) return text;
  // First what else may not stand there: a mark that is dropped must not join a line end, or a pair, that it parted.
  const closed = closeDirections(printable(text));
  return closed === text && isOneIsolate(text) ? text : FIRST_STRONG_ISOLATE + closed + POP_ISOLATE;
}

/** Whether the text is a single isolate from its first to its last character, so that setting it in another adds nothing. */
function isOneIsolate(text: string): boolean {
  let depth = 0;
  for (const character of text.slice(0, -1)) {
    if (ISOLATES.test(character)) depth++;
    else if (character === POP_ISOLATE) depth--;
    if (depth === 0) return false;
  }
  return text.endsWith(POP_ISOLATE);
}

function closeDirections(text: string): string {
  const open: string[] = [];
  let out = '';
  for (const character of text) {
    if (EMBEDDINGS.test(character)) open.push(POP_EMBEDDING);
    else if (ISOLATES.test(character)) open.push(POP_ISOLATE);
    else if (character === POP_EMBEDDING) {
      // An embedding opened outside an isolate cannot be closed inside it.
      if (open.at(-1) !== POP_EMBEDDING) continue;
      open.pop();
    } else if (character === POP_ISOLATE) {
      if (!open.includes(POP_ISOLATE)) continue;
      while (open.at(-1) === POP_EMBEDDING) out += open.pop();
      open.pop();
    }
    out += character;
  }
  while (open.length > 0) out += open.pop();
  return out;
}

const CONTROLS = /[\u0000-\u0008\u000B\u000C\u000E-\u001F\u007F-\u009F\uFFFE\uFFFF]/g;
const LONE_SURROGATES = /[\uD800-\uDBFF](?![\uDC00-\uDFFF])|(?<![\uD800-\uDBFF])[\uDC00-\uDFFF]/g;

/** The text without characters that XML 1.0 (section 2.2) and HTML forbid; each is shown as U+FFFD. Line ends become `\n`. */
function printable(text: string): string {
  return text.replace(/\r\n?/g, '\n').replace(CONTROLS, '\uFFFD').replace(LONE_SURROGATES, '\uFFFD');
}

/** The text as one line: runs of white space become a space. */
export function oneLine(text: string): string {
  return text.replace(/[\s\u2028\u2029]+/g, ' ').trim();
}

const MARKUP: Readonly<Record<string, string>> = {
  '&': '&amp;',
  '<': '&lt;',
  '>': '&gt;',
  '"': '&quot;',
  "'": '&#39;',
  // Template languages that a page may pass through read braces and backticks; as references they see neither.
  '{': '&#123;',
  '}': '&#125;',
  '`': '&#96;',
};

function markup(text: string): string {
  return printable(isolateDirections(text)).replace(/[&<>"'`{}]/g, (character) => MARKUP[character] ?? character);
}

/** Text between tags of an HTML page (not inside `script` or `style`). */
export function htmlText(text: string): string {
  return markup(text);
}

/** The value of an HTML attribute, to stand between double quotes. For an address use `safeAddress` first. */
export function htmlAttribute(text: string): string {
  return markup(text).replace(/\n/g, '&#10;');
}

/** Text between tags of an XML document (Atom, sitemap). */
export function xmlText(text: string): string {
  return markup(text);
}

/** The value of an XML attribute, to stand between double quotes. */
export function xmlAttribute(text: string): string {
  return markup(text).replace(/\n/g, '&#10;').replace(/\t/g, '&#9;');
}

/** Text of an SVG drawing, on its own or inside an HTML page: safe for both parsers. */
export function svgText(text: string): string {
  return oneLine(markup(text));
}

/**
 * JSON as a document of its own, two spaces, a line end at the end. It may be shown in a terminal: the controls that JSON
 * lets stand (RFC 8259, section 7, names only those below U+0020) are written as escapes too, and so are the line ends
 * that not every reader takes for text.
 */
export function jsonDocument(value: unknown): string {
  return `${JSON.stringify(value, undefined, 2).replace(/[\u007F-\u009F\u2028\u2029]/g, asEscape)}\n`;
}

const asEscape = (unit: string): string => '\\u' + unit.charCodeAt(0).toString(16).padStart(4, '0');

/**
 * JSON to stand inside a `script` element. It parses to the same value; it cannot end the element, open a comment, or
 * be taken for a template.
 */
export function jsonInScript(value: unknown): string {
  return JSON.stringify(value)
    .replace(/[<>&\u007F-\u009F\u2028\u2029]/g, asEscape)
    .replace(/\{(?=[{%#])|(?<=\{)\{/g, '\\u007b');
}

/** JSON in ASCII alone, for an attribute: nothing in it is changed by what is done to text. */
export function asciiJson(value: unknown): string {
  return JSON.stringify(value).replace(/[^ -~]/g, asEscape);
}

/**
 * A cell of a comma-separated file that a spreadsheet shows as text. A cell that a spreadsheet would take for a formula
 * begins with an apostrophe (practice described by OWASP, 'CSV injection'). For figures made by the program, which may
 * begin with a minus, write the figure itself.
 */
export function csvCell(text: string): string {
  const clean = printable(isolateDirections(text));
  // The full-width signs are read as their plain forms by some spreadsheets.
  const safe = /^[\s\u200B\uFEFF\u2068]*[=+\-@|%\t\uFF1D\uFF0B\uFF0D\uFF20]/.test(clean) ? `'${clean}` : clean;
  return /[",;\n\t']/.test(safe) ? `"${safe.replace(/"/g, '""')}"` : safe;
}

/**
 * Text in Markdown (CommonMark, GitHub's additions, MDX, directives) that reads back as the same text on one line, and
 * that a template language run before it leaves alone.
 */
export function markdownText(text: string): string {
  return oneLine(printable(isolateDirections(text)))
    .replace(/[\\`*_[\]{}|~$]/g, '\\$&')
    .replace(/&/g, '&amp;')
    .replace(/</g, '&lt;')
    .replace(/>/g, '&gt;')
    .replace(/(?<=\{)[%#]/g, '\\$&') // {% … %}, {# … #}
    .replace(/^([#+\-=])/, '\\$1') // headings, lists, rules, underlines
    .replace(/^(\d{1,9})([.)])(?=\s|$)/, '$1\\$2') // numbered lists
    .replace(/^:|:(?=[/:A-Za-z])/g, '\\:') // bare addresses and directives
    .replace(/(?<=www)\./gi, '\\.')
    .replace(/@/g, '\\@');
}

/** Words of Latin letters and ordinary marks, parted by single spaces: nothing that could be written differently. */
const PLAIN_WORDS =
  /^[!-~\u00a1-\u00ac\u00ae-\u02ff\u2010-\u2027]+(?: [!-~\u00a1-\u00ac\u00ae-\u02ff\u2010-\u2027]+)*$/;

/** Text for a terminal or a plain text file: one line, no control characters, so no escape sequence either. */
export function plainText(text: string): string {
  if (PLAIN_WORDS.test(text)) return text;
  return oneLine(printable(isolateDirections(text)));
}

/**
 * An address that may stand in a link: `http`, `https`, `mailto`, or relative to the page. Anything else (`javascript:`,
 * `data:`, `file:`, addresses with control characters, which parsers drop before they look) is not an address to us.
 * @returns undefined when the text is not such an address; then show it as text.
 */
export function safeAddress(text: string): string | undefined {
  const address = text.trim();
  if (address === '' || /[\u0000-\u0020\u007F-\u00A0\u2028\u2029\\]/.test(address) || DIRECTIONAL.test(address))
    return undefined;
  const scheme = /^([a-z][a-z0-9+.-]*):/i.exec(address)?.[1]?.toLowerCase();
  if (scheme === undefined) return address.startsWith('//') ? undefined : address;
  return scheme === 'http' || scheme === 'https' || scheme === 'mailto' ? address : undefined;
}

/**
 * The address of a picture that a page may show without asking another machine for it: a path relative to the page, or
 * a picture held in the address itself. Spaces in a path are written `%20`.
 * @returns undefined when the picture would have to be fetched from elsewhere or is no picture.
 */
export function pictureAddress(text: string): string | undefined {
  const address = text.trim().replace(/ /g, '%20');
  if (/^data:image\/(?:png|jpeg|webp|avif|gif);base64,[A-Za-z0-9+/]+=*$/.test(address)) return address;
  const safe = safeAddress(address);
  return safe === undefined || /^[a-z][a-z0-9+.-]*:/i.test(safe) ? undefined : safe;
}

/** Names that a file may not have on some systems, whatever its ending (Microsoft, 'Naming Files, Paths, and Namespaces'). */
const RESERVED = /^(?:con|prn|aux|nul|com\d|lpt\d)$/;

/**
 * A file name made from a title: letters and digits of any script, lower case, joined by hyphens; never empty, never a
 * name that a system keeps for itself, never longer than 80 characters.
 */
export function fileName(title: string): string {
  const words =
    title
      .normalize('NFKC')
      .toLowerCase()
      .match(/[\p{L}\p{M}\p{N}]+/gu) ?? [];
  const name = [...words.join('-')].slice(0, 80).join('').replace(/-+$/, '');
  return name === '' || RESERVED.test(name) ? `recipe${name === '' ? '' : '-' + name}` : name;
}
