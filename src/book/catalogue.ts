/** How much a finding weighs: an error holds back what depends on it, a warning asks for a look, a note informs. */
export type Severity = 'error' | 'warning' | 'note';

interface CatalogueEntry {
  readonly severity: Severity;
  /** One sentence: what the finding means whenever it appears. */
  readonly meaning: string;
}

/**
 * Every finding there is, by its permanent code. A code never changes its meaning and is never given to
 * something else, so that scripts and notes may rely on it.
 */
export const CATALOGUE = {
  // Files and folders
  'no-content-folder': error('There is no folder of content where one was expected.'),
  'unreadable-file': error('The file or folder is there but cannot be read.'),
  'outside-link': error('A symbolic link leads out of the content folder and is not followed.'),
  'file-too-large': error('The file is larger than any file of its kind is meant to be.'),
  'not-utf-8': error('The file is not text in UTF-8.'),
  'control-character': error('The text holds an invisible control character.'),
  'file-name': error('The name of a file or folder cannot serve as an id.'),
  'stray-file': note('The file belongs to no collection and is not used.'),

  // YAML
  'yaml-syntax': error('The text is not YAML.'),
  'yaml-alias': error('Anchors, aliases and merge keys are not used: each thing is written where it counts.'),
  'yaml-tag': error('YAML tags are not used: every value is plain text.'),
  'yaml-documents': error('A file holds one YAML document, without directives.'),
  'yaml-too-deep': error('Lists and mappings are nested deeper than any content needs.'),
  'yaml-too-many': error('The file has more keys and values than any content needs.'),
  'duplicate-key': error('The same key stands twice in one mapping; only the first would count.'),
  'key-form': error('A key is not a plain word or text.'),
  'no-value': error('A key or a list item has nothing after it.'),

  // Front matter
  'front-matter-missing': error('The file does not begin with its data between two lines of three hyphens.'),
  'front-matter-unclosed': error('The data on top of the file has no closing line of three hyphens.'),

  // CSV
  'csv-header': error('The first line of a CSV file does not name its columns.'),
  'csv-duplicate-header': error('Two columns of a CSV file have the same name; only the first would count.'),
  'csv-quotes': error('A quotation mark in a CSV row is not closed, or stands inside a field.'),
  'csv-fields': error('A CSV row has more or fewer fields than there are columns.'),
  'csv-too-many-rows': error('A CSV file has more rows than a price list is meant to have.'),

  // Bodies: notes, stories and letters
  'body-too-large': error('The text below the data is longer than any such text is meant to be.'),
  'body-too-deep': error('Lists, quotations or components are nested deeper than a page can show.'),
  'body-html': error('Text does not hold HTML.'),
  'body-expression': error('Text does not hold expressions in braces.'),
  'body-import': error('Text does not import or export anything.'),
  'body-component': error('Text holds no components but the listed ones.'),
  'body-attribute': error('Attributes of components are plain text.'),
  'body-link': error('Links lead to http, https, mailto or tel addresses, or to a heading of the same page.'),
  'body-picture': error('Pictures are files of the content folder.'),
  'body-syntax': error('The text is not Markdown with components.'),
  'body-form': error('The text uses a form of Markdown that the pages do not show.'),
} as const satisfies Record<string, CatalogueEntry>;

/** The permanent code of a finding. */
export type FindingCode = keyof typeof CATALOGUE;

function error(meaning: string): CatalogueEntry {
  return { severity: 'error', meaning };
}

function note(meaning: string): CatalogueEntry {
  return { severity: 'note', meaning };
}
