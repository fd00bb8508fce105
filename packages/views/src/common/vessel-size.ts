import { PLAIN, printCount, printMeasure, units, type NumberStyle } from '@quern/quantity';
import type { VesselFact } from '@quern/syntax';

/** The size of a tin or a jar as it is sold: '25 x 10 x 8 cm', '3 l'. */
export function sizeText(fact: VesselFact, style: NumberStyle = PLAIN): string {
  if (fact.volume) return printMeasure(fact.volume.range, fact.volume.unit.id, style);
  const figures = (fact.lengths ?? []).map((length) => printCount(length, style));
  return `${figures.join(' x ')} ${units[fact.lengthUnit ?? 'cm'].many}`;
}
