/*
 * Holds the first paint back until the fonts are there, a second at the most, so that no line jumps when they come.
 * It has to run before the page is painted, and so stands apart from the page's own script.
 */
(() => {
  const root = document.documentElement;
  const show = () => root.classList.remove('held');
  root.classList.add('held');
  setTimeout(show, 1000);
  document.addEventListener('DOMContentLoaded', () => {
    // Fonts are asked for once something is laid out that needs them.
    void document.body.offsetHeight;
    document.fonts.ready.then(show, show);
  });
})();
