import type { Place } from '@quern/text';
import type { CautionFacts } from './facts.js';

/** How a rule speaks. `note`: good to know. `care`: something has to be done. `check`: what is written departs from a published figure. */
export type Weight = 'note' | 'care' | 'check';

interface Finding {
  readonly weight: Weight;
  /** One or two calm sentences. */
  readonly text: string;
  /** The same for whoever eats it and did not make it, as a small label says it; without it `text` serves. */
  readonly forEater?: string;
  /** The lines it speaks of. */
  readonly places: readonly Place[];
}

/** A caution: when it speaks, why, and on whose word. */
export interface CautionRule {
  /** Stable, in kebab case. */
  readonly id: string;
  readonly title: string;
  /** When it speaks, in words; for the page of cautions. */
  readonly when: string;
  readonly reason: string;
  /** Where the figures stand. 'from memory' where they could not be seen. */
  readonly source: string;
  find(facts: CautionFacts): Finding | undefined;
}

export interface Caution extends Finding {
  readonly id: string;
  readonly title: string;
  readonly reason: string;
  readonly source: string;
}
