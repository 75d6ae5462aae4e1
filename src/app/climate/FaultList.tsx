// What is wrong with a file or a form, one line a fault, read aloud as it appears.

import { describeFault, type Fault } from '../../weather/read-result.ts';

export function FaultList({ faults }: { faults: readonly Fault[] }) {
  if (faults.length === 0) return null;
  return (
    <div class="fault-list" role="alert">
      <ul>
        {faults.map((fault) => (
          <li key={describeFault(fault)}>{describeFault(fault)}.</li>
        ))}
      </ul>
    </div>
  );
}
