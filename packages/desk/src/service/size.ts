import type { Formula } from '@quern/compiler';
import { findScale, readScale, UNSCALED, type Scale, type ScaleKind } from '@quern/views';

const KINDS: readonly ScaleKind[] = ['times', 'weight', 'makes', 'tin', 'have'];

export type Sized =
  { readonly ok: true; readonly scale: Scale } | { readonly ok: false; readonly reasons: readonly string[] };

/** What `2`, `1/2`, `5 kg`, `6 loaves`, `3 of 25x10x8 cm` or `350 g sunflower seeds` means for a recipe. */
export function readSize(text: string, formula: Formula): Sized {
  const words = text.trim();
  if (words === '') return { ok: true, scale: UNSCALED };
  let refused: Sized | undefined;
  for (const kind of KINDS) {
    const request = readScale(kind, words);
    if (!request.ok) continue;
    const found = findScale(request.value, formula);
    if (found.ok) return { ok: true, scale: found.value };
    refused ??= { ok: false, reasons: [found.problem, found.help] };
  }
  return (
    refused ?? {
      ok: false,
      reasons: [`“${words}” is not a size`, 'Write a number such as 2 or 1/2, or “6 loaves”, “5 kg”, “40 slices”.'],
    }
  );
}
