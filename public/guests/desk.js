// Stands for the desk's own server: shows what the form would send, and sends it nowhere.
const form = document.querySelector('form');
form.addEventListener('submit', (event) => {
  event.preventDefault();
  const sent = new FormData(form).get('trip');
  form.querySelector('[role="status"]').textContent = `${form.dataset.booked} trip=${sent.slice(0, 160)} …`;
});
