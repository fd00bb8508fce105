export interface Installed {
  readonly name: string;
  readonly version: string;
  /** Comes to those who install a package of ours. */
  readonly production: boolean;
}
export interface Advisory {
  readonly name: string;
  readonly version: string;
  readonly id: string;
  readonly severity: string;
  readonly summary: string;
  readonly production?: boolean;
}
export type Answer =
  | { readonly kind: 'silence'; readonly why: string }
  | { readonly kind: 'answer'; readonly found: readonly Advisory[]; readonly of: string; readonly through?: number };
/** Every package that a lock names, each version once. */
export function installed(lock: object): readonly Installed[];
/** The answer of the registry as `npm audit --json` tells it. */
export function fromAudit(stdout: string): Answer;
/** Every record in the OSV format in a folder. */
export function readDatabase(folder: string): { readonly records: readonly object[]; readonly read: number };
/** The records that speak of an installed version. */
export function advisoriesIn(packages: readonly Installed[], records: readonly object[]): readonly Advisory[];
export interface Published {
  readonly id: string;
  readonly name: string;
  /** A range as semver writes it. */
  readonly affected: string;
  readonly severity: string;
}
/** The table of published advisories at hand. */
export function readPublished(path: string): readonly Published[];
/** The published advisories that speak of an installed version. */
export function publishedOf(packages: readonly Installed[], published: readonly Published[]): readonly Advisory[];
/** The words for an answer, and the exit code that goes with it. */
export function tell(answer: Answer, packages: number): { readonly text: string; readonly code: 0 | 1 | 3 };
