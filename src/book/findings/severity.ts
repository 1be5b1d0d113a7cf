/** How much a finding weighs: an error holds back what depends on it, a warning asks for a look, a note informs. */
export type Severity = 'error' | 'warning' | 'note';

/** What every finding of a code has in common. */
export interface CatalogueEntry {
  readonly severity: Severity;
  /** One sentence: what the finding means whenever it appears. */
  readonly meaning: string;
}

export function error(meaning: string): CatalogueEntry {
  return { severity: 'error', meaning };
}

export function warning(meaning: string): CatalogueEntry {
  return { severity: 'warning', meaning };
}

export function note(meaning: string): CatalogueEntry {
  return { severity: 'note', meaning };
}
