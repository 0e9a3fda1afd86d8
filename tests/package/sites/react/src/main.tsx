import 'homeleg/planner/define';
import type { Trip } from 'homeleg/core';
import type {} from 'homeleg/react';
import { StrictMode, useState } from 'react';
import { createRoot } from 'react-dom/client';
import given from './trips.json';

const [first, second] = given as unknown as [Trip, Trip];

function Club() {
  const [trip, setTrip] = useState(first);
  const [verdict, setVerdict] = useState('');
  return (
    <main>
      <h1>Our boats</h1>
      <button type="button" onClick={() => setTrip(second)}>
        The other trip
      </button>
      <output>{verdict}</output>
      <homeleg-planner
        keep="none"
        waters="none"
        trip={trip}
        onhomeleg-verdict={(event) => setVerdict(event.detail.verdict ?? '')}
      />
    </main>
  );
}

// @ts-expect-error There is no such unit system.
export const wrong = <homeleg-planner units="cubits" />;

createRoot(document.getElementById('page')!).render(
  <StrictMode>
    <Club />
  </StrictMode>,
);
