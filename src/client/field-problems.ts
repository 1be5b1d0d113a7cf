import { changeText } from './changed-text.ts';
import type { FieldProblem } from './choice-in.ts';
import { elementIn } from './element-in.ts';

/**
 * Shows problems at their fields and as a list above the form, each leading to its field. Every field's group,
 * `data-group`, has a place for the sentence, which the field is described by.
 */
export function showProblems(form: HTMLFormElement, problems: readonly FieldProblem[]): void {
  clearProblems(form);
  const summary = elementIn(form, '[data-part="problems"]', HTMLElement);
  summary.hidden = problems.length === 0;
  if (problems.length === 0) return;
  const items = problems.map(({ field, what }) => {
    const element = fieldOf(form, field);
    const place = element?.closest('[data-group]')?.querySelector<HTMLElement>('[data-part="problem"]');
    if (place) {
      const said = place.textContent ?? '';
      changeText(place, said.includes(what) ? said : `${said} ${what}`.trim());
    }
    element?.setAttribute('aria-invalid', 'true');
    const item = document.createElement('li');
    const link = document.createElement('a');
    link.textContent = what;
    if (element) link.href = `#${element.id}`;
    link.addEventListener('click', (event) => {
      event.preventDefault();
      element?.focus();
    });
    item.append(link);
    return item;
  });
  elementIn(summary, 'ul', HTMLUListElement).replaceChildren(...items);
  summary.focus();
}

/** Takes all problems away; they are shown again when the form is sent again. */
export function clearProblems(form: HTMLFormElement): void {
  for (const place of form.querySelectorAll('[data-part="problem"]')) changeText(place, '');
  for (const field of form.querySelectorAll('[aria-invalid="true"]')) field.removeAttribute('aria-invalid');
}

/** The field of a name that can be reached now: of several with one name the first. */
function fieldOf(form: HTMLFormElement, name: string): HTMLElement | null {
  const found = [...form.elements].filter((element) => element.getAttribute('name') === name);
  const shown = found.find((element) => element.closest('[hidden]') === null) ?? found[0];
  return shown instanceof HTMLElement ? shown : null;
}
