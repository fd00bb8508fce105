import { TOKEN_TYPES } from '@quern/ide';
import { StateEffect, StateField, type EditorState, type Extension } from '@codemirror/state';
import { Decoration, EditorView, type DecorationSet } from '@codemirror/view';

/*
 * Colours come from the same semantic tokens that other editors get. Between one answer and the next they move with the
 * text.
 */

const setTokens = StateEffect.define<readonly number[]>();

const marks = TOKEN_TYPES.map((type) => Decoration.mark({ class: `quern-t-${type}` }));

const field = StateField.define<DecorationSet>({
  create: () => Decoration.none,
  update(value, transaction) {
    const asked = transaction.effects.find((effect) => effect.is(setTokens));
    if (asked) return decorations(asked.value as readonly number[], transaction.state);
    return value.map(transaction.changes);
  },
  provide: (own) => EditorView.decorations.from(own),
});

function decorations(tokens: readonly number[], { doc }: EditorState): DecorationSet {
  const ranges = [];
  for (let at = 0; at + 2 < tokens.length; at += 3) {
    const [from = 0, to = 0, type = 0] = tokens.slice(at, at + 3);
    const mark = marks[type];
    if (mark && from < to && to <= doc.length) ranges.push(mark.range(from, to));
  }
  return Decoration.set(ranges, true);
}

export const tokenColours: Extension = field;

/** Tokens as the service gives them, three numbers each. */
export const withTokens = (tokens: readonly number[]): StateEffect<readonly number[]> => setTokens.of(tokens);
