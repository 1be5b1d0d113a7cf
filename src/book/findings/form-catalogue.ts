import { type CatalogueEntry, error, note, warning } from './severity.ts';

/** What may be wrong with a file by itself: its bytes, its syntax, its fields, its text and pictures. */
export const FORM_CATALOGUE = {
  // Files and folders
  'no-content-folder': error('The content folder is not where it was expected.'),
  'unreadable-file': error('The file or folder exists but can’t be read.'),
  'outside-link': error('A symbolic link points outside the content folder and is not followed.'),
  'file-too-large': error('The file is larger than any file of its kind is meant to be.'),
  'not-utf-8': error('The file is not text in UTF-8.'),
  'control-character': error('The text holds an invisible control character.'),
  'file-name': error('The name of a file or folder cannot serve as an id.'),
  'stray-file': note('The file is not one that Salver uses.'),

  // YAML
  'yaml-syntax': error('The text is not YAML.'),
  'yaml-alias': error(
    'Anchors, aliases and merge keys are not used: each value is written where it is used.',
  ),
  'yaml-tag': error('YAML tags are not used: every value is plain text.'),
  'yaml-documents': error('A file holds one YAML document, without directives.'),
  'yaml-too-deep': error('Lists and mappings are nested deeper than any content needs.'),
  'yaml-too-many': error('The file has more keys and values than any content needs.'),
  'duplicate-key': error('The same key is there twice; only the first would count.'),
  'key-form': error('A key is not a plain word or text.'),
  'no-value': error('A key or a list item has nothing after it.'),

  // Front matter
  'front-matter-missing': error('The file does not start with its data between two lines of three hyphens.'),
  'front-matter-unclosed': error('The data on top of the file has no closing line of three hyphens.'),

  // CSV
  'csv-header': error('The first line of a CSV file does not name its columns.'),
  'csv-duplicate-header': error('Two columns of a CSV file have the same name; only the first would count.'),
  'csv-quotes': error('A quotation mark in a CSV row is not closed, or is inside a field.'),
  'csv-fields': error('A CSV row has more or fewer fields than there are columns.'),
  'csv-too-many-rows': error('A CSV file has more rows than any price list should have.'),

  // Bodies: notes, stories and letters
  'body-too-large': error('The text below the data is longer than any such text is meant to be.'),
  'body-too-deep': error('Lists, quotations or components are nested deeper than a page can show.'),
  'body-html': error('Text can’t contain HTML.'),
  'body-expression': error('Text can’t contain expressions in braces.'),
  'body-import': error('Text can’t import or export anything.'),
  'body-component': error('Text can use only the listed components.'),
  'body-component-renamed': note('A component of a text has a new name; the old one is still read.'),
  'body-attribute': error('Attributes of components are plain text.'),
  'body-link': error('Links lead to http, https, mailto or tel addresses, or to a heading on the same page.'),
  'body-picture': error('Pictures are files in the content folder.'),
  'body-syntax': error('The text is not valid Markdown with components.'),
  'body-form': error('The text uses a form of Markdown that the pages do not show.'),

  'no-kitchen': error('The content folder has no kitchen.yaml, and everything needs it.'),
  'mark-missing': error(
    'The drawing that kitchen.yaml names as the kitchen’s mark is not in the content folder.',
  ),
  'mark-form': error('Pages can’t show the drawing of the kitchen’s mark.'),
  'mark-unsafe': error('The kitchen’s mark has something in it that does more than draw.'),
  'picture-undescribed': error('A picture has no description for people who can’t see it.'),
  'picture-form': error('A picture cannot be decoded, or is too large to be.'),
  'photo-gone': warning('A picture that an offer was issued with is no longer in the content folder.'),
  'picture-missing': error('A picture that a text shows is not in the content folder.'),

  // Form: which fields there are, and what they say
  'missing-field': error('A required field is missing.'),
  'older-name': note('A field has a new name; this is the old one, which still works.'),
  'unknown-field': error('There is no such field here.'),
  'wrong-form': error('There is a text, a list or a mapping where one of the other two belongs.'),
  'unknown-word': error('The field takes one of a few words, and this is not one of them.'),
  'too-long': error('A text or list is too long for its field.'),
  'bad-id': error('Ids are lower-case words joined by hyphens.'),
  'not-understood': error('The text is not in the form its field needs.'),
} as const satisfies Record<string, CatalogueEntry>;
