/** Most that a stepper reaches. */
const MOST = 100_000;

/**
 * Makes the buttons beside a count, `data-step` naming its field, go one up or down, and the arrow keys in the field
 * as well. The field stays one for text, so that what was typed is never thrown away for being no number.
 */
export function makeSteppers(form: HTMLFormElement): void {
  form.addEventListener('click', ({ target }) => {
    const button = target instanceof Element ? target.closest<HTMLElement>('[data-step]') : null;
    const field = button && form.elements.namedItem(button.dataset.step ?? '');
    if (field instanceof HTMLInputElement) step(field, Number(button?.dataset.by));
  });
  form.addEventListener('keydown', (event) => {
    const field = event.target;
    if (!(field instanceof HTMLInputElement) || field.inputMode !== 'numeric') return;
    const by = event.key === 'ArrowUp' ? 1 : event.key === 'ArrowDown' ? -1 : 0;
    if (by === 0) return;
    event.preventDefault();
    step(field, by);
  });
}

function step(field: HTMLInputElement, by: number): void {
  const text = field.value.trim();
  const now = /^\d{1,6}$/.test(text) ? Number(text) : 0;
  field.value = String(Math.min(MOST, Math.max(0, now + by)));
  field.dispatchEvent(new Event('input', { bubbles: true }));
}
