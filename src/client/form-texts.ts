/** What a form's fields hold, by name: text as typed, `on` for a ticked box. Fields that are empty are left out. */
export type Texts = ReadonlyMap<string, string>;

/** What the fields of a form hold now. */
export function formTexts(form: HTMLFormElement): Map<string, string> {
  const texts = new Map<string, string>();
  for (const field of fieldsOf(form)) {
    if (!field.name) continue;
    if (isTick(field)) {
      if (field.checked) texts.set(field.name, field.value);
    } else if (field.value !== '') {
      texts.set(field.name, field.value);
    }
  }
  return texts;
}

/**
 * Puts texts into the fields of their names and empties every other that `covers` says the texts speak for. Texts come
 * from links and from what a browser kept, so a name without a field, or a value that is no option, is passed over.
 */
export function fillForm(form: HTMLFormElement, texts: Texts, covers: (name: string) => boolean): void {
  for (const field of fieldsOf(form)) {
    if (!field.name || !covers(field.name)) continue;
    const text = texts.get(field.name) ?? '';
    if (isTick(field)) {
      // One of several is never left unchosen.
      if (field.type === 'radio')
        field.checked = text === field.value || (field.checked && !hasOption(form, field.name, text));
      else field.checked = text === field.value;
    } else if (field instanceof HTMLSelectElement) {
      if ([...field.options].some(({ value }) => value === text)) field.value = text;
    } else {
      field.value = text.slice(0, field.maxLength > 0 ? field.maxLength : 200);
    }
  }
}

type Field = HTMLInputElement | HTMLSelectElement | HTMLTextAreaElement;

function fieldsOf(form: HTMLFormElement): Field[] {
  return [...form.elements].filter(
    (element): element is Field =>
      element instanceof HTMLInputElement ||
      element instanceof HTMLSelectElement ||
      element instanceof HTMLTextAreaElement,
  );
}

function isTick(field: Field): field is HTMLInputElement {
  return field instanceof HTMLInputElement && (field.type === 'checkbox' || field.type === 'radio');
}

function hasOption(form: HTMLFormElement, name: string, value: string): boolean {
  return fieldsOf(form).some((field) => field.name === name && field.value === value);
}
