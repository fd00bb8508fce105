import type { MessageArguments, MessageCode, Span } from '@quern/text';

/** Why a line cannot be read, thrown inside the parser and caught where a line is parsed. Never leaves the package. */
export class Fault<C extends MessageCode = MessageCode> extends Error {
  constructor(
    readonly code: C,
    readonly span: Span,
    readonly args: MessageArguments<C>,
  ) {
    super(code);
  }
}
