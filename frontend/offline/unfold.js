/** Paper cannot be unfolded: what is folded on the page is open while it is printed. */
let opened = [];

addEventListener('beforeprint', () => {
  opened = [...document.querySelectorAll('.hw-path details:not([open])')];
  opened.forEach((fold) => {
    fold.open = true;
  });
});

addEventListener('afterprint', () => {
  opened.forEach((fold) => {
    fold.open = false;
  });
  opened = [];
});
