const planner = document.querySelector('homeleg-planner');
const said = document.querySelector('output');
const [first, second] = await (await fetch('/src/trips.json')).json();

planner.addEventListener('homeleg-verdict', (event) => {
  said.textContent = event.detail.verdict ?? '';
});
// May stand before the element is there: what a page sets early is kept.
planner.trip = first;
document.querySelector('button').addEventListener('click', () => {
  planner.trip = second;
});
