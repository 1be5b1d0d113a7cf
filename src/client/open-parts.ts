/** Opens the folded parts that the address leads into, and goes there: from a list to a task, from a task to its card. */
export function startOpenParts(): void {
  addEventListener('hashchange', show);
  // A second tap on the same link changes no address.
  document.addEventListener('click', ({ target }) => {
    const link = target instanceof Element ? target.closest('a') : null;
    if (link && link.hash !== '' && link.hash === location.hash) show();
  });
  show();
}

function show(): void {
  const id = decodeURIComponent(location.hash.slice(1));
  const goal = id === '' ? null : document.getElementById(id);
  if (!goal) return;
  for (let part = goal.closest('details'); part; part = part.parentElement?.closest('details') ?? null)
    part.open = true;
  goal.scrollIntoView();
}
