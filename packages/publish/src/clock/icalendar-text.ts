import type { Temporal } from 'temporal-polyfill';

/** TEXT values of RFC 5545, 3.3.11: backslash, semicolon, comma and line ends are escaped; other controls cannot stand. */
export function escapeText(text: string): string {
  return text
    .replace(/\r\n?/g, '\n')
    .replace(/[\u0000-\u0008\u000B\u000C\u000E-\u001F\u007F-\u009F]/g, '\uFFFD')
    .replace(/[\uD800-\uDBFF](?![\uDC00-\uDFFF])|(?<![\uD800-\uDBFF])[\uDC00-\uDFFF]/g, '\uFFFD')
    .replace(/[\\;,]/g, '\\$&')
    .replace(/\n/g, '\\n');
}

/** One content line: folded after at most 75 octets, never inside a character (RFC 5545, 3.1), ended by CR LF. */
export function calendarLine(line: string): string {
  let out = '';
  let octets = 0;
  for (const character of line) {
    const size = octetsOf(character);
    if (octets + size > 75) {
      out += '\r\n ';
      octets = 1;
    }
    out += character;
    octets += size;
  }
  return `${out}\r\n`;
}

function octetsOf(character: string): number {
  const code = character.codePointAt(0) ?? 0;
  if (code < 0x80) return 1;
  if (code < 0x800) return 2;
  return code < 0x10000 ? 3 : 4;
}

/** Content lines of a calendar, unfolded. */
export function unfold(text: string): string[] {
  return text
    .replace(/\r?\n[ \t]/g, '')
    .split(/\r?\n/)
    .filter((line) => line !== '');
}

const digits = (value: number, count: number): string => String(value).padStart(count, '0');

/** `20270508`. */
export const dateValue = (date: { readonly year: number; readonly month: number; readonly day: number }): string =>
  `${digits(date.year, 4)}${digits(date.month, 2)}${digits(date.day, 2)}`;

/** `20270508T160000`, as the wall clock of its zone says. */
export const localValue = (at: Temporal.ZonedDateTime | Temporal.PlainDateTime): string =>
  `${dateValue(at)}T${digits(at.hour, 2)}${digits(at.minute, 2)}${digits(at.second, 2)}`;

/** `20270508T150000Z`. */
export function utcValue(milliseconds: number): string {
  const seconds = Math.floor(milliseconds / 1000);
  const days = Math.floor(seconds / 86400);
  const rest = seconds - days * 86400;
  const { year, month, day } = civil(days);
  return `${dateValue({ year, month, day })}T${digits(Math.floor(rest / 3600), 2)}${digits(Math.floor((rest % 3600) / 60), 2)}${digits(rest % 60, 2)}Z`;
}

/** The date so many days after 1970-01-01 (proleptic Gregorian; the usual count of 400-year cycles that begin in March). */
function civil(days: number): { year: number; month: number; day: number } {
  const shifted = days + 719_468;
  const era = Math.floor(shifted / 146_097);
  const ofEra = shifted - era * 146_097;
  const yearOfEra = Math.floor(
    (ofEra - Math.floor(ofEra / 1460) + Math.floor(ofEra / 36_524) - Math.floor(ofEra / 146_096)) / 365,
  );
  const ofYear = ofEra - (365 * yearOfEra + Math.floor(yearOfEra / 4) - Math.floor(yearOfEra / 100));
  const monthFromMarch = Math.floor((5 * ofYear + 2) / 153);
  const day = ofYear - Math.floor((153 * monthFromMarch + 2) / 5) + 1;
  const month = monthFromMarch < 10 ? monthFromMarch + 3 : monthFromMarch - 9;
  return { year: yearOfEra + era * 400 + (month <= 2 ? 1 : 0), month, day };
}

/** Sixteen hexadecimal digits of a text, the same everywhere (FNV-1a, 64 bits, over UTF-16 units). */
export function hashText(text: string): string {
  let hash = 0xcbf29ce484222325n;
  for (let index = 0; index < text.length; index++) {
    hash ^= BigInt(text.charCodeAt(index));
    hash = (hash * 0x100000001b3n) & 0xffffffffffffffffn;
  }
  return hash.toString(16).padStart(16, '0');
}
