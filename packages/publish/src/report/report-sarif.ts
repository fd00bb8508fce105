import { messages, type MessageCode } from '@quern/text';
import { jsonDocument } from '../escape.js';
import type { Found } from './found.js';

const LEVEL = { error: 'error', warning: 'warning', hint: 'note' } as const;

/**
 * Diagnostics as SARIF 2.1.0 (OASIS Standard, 27 March 2020), for the code scanning of a forge. Paths are relative to
 * the folder in which the check ran.
 */
export function reportSarif(found: readonly Found[], toolVersion: string): string {
  const codes = [...new Set(found.map(({ code }) => code))].sort();
  const log = {
    $schema: 'https://docs.oasis-open.org/sarif/sarif/v2.1.0/errata01/os/schemas/sarif-schema-2.1.0.json',
    version: '2.1.0',
    runs: [
      {
        tool: { driver: { name: 'quern', semanticVersion: toolVersion, rules: codes.map(ruleOf) } },
        columnKind: 'utf16CodeUnits',
        results: found.map((one) => resultOf(one, codes.indexOf(one.code))),
      },
    ],
  };
  return jsonDocument(log);
}

function ruleOf(code: MessageCode): object {
  const { name, severity, why } = messages[code];
  return {
    id: code,
    name: name.replace(/(?:^|[^\p{L}\p{N}]+)(\p{L}|\p{N})/gu, (_, first: string) => first.toUpperCase()),
    shortDescription: { text: name },
    fullDescription: { text: why },
    defaultConfiguration: { level: LEVEL[severity] },
  };
}

function resultOf({ file, start, end, code, severity, message, help, related }: Found, ruleIndex: number): object {
  return {
    ruleId: code,
    ruleIndex,
    level: LEVEL[severity],
    message: { text: `${message}. Way out: ${help}` },
    locations: [
      {
        physicalLocation: {
          artifactLocation: { uri: address(file) },
          region: { startLine: start.line, startColumn: start.column, endLine: end.line, endColumn: end.column },
        },
      },
    ],
    ...(related.length > 0
      ? {
          relatedLocations: related.map((other, index) => ({
            id: index + 1,
            message: { text: other.note },
            physicalLocation: {
              artifactLocation: { uri: address(other.file) },
              region: { startLine: other.start.line, startColumn: other.start.column },
            },
          })),
        }
      : {}),
  };
}

/** A relative path as a relative reference of RFC 3986. */
function address(path: string): string {
  return path
    .replace(/\p{Surrogate}/gu, '\uFFFD')
    .split('/')
    .map(encodeURIComponent)
    .join('/');
}
