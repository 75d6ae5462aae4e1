// A weather file that does not say where it is: asks for latitude, longitude and a name, then reads it again.

import { useState } from 'preact/hooks';
import { useSession } from '../state/session-context.ts';
import { typedNumber } from '../units/number-text.ts';

export function PlaceQuestion() {
  const session = useSession();
  const file = session.placeless.value;
  const [latitude, setLatitude] = useState('');
  const [longitude, setLongitude] = useState('');
  const [name, setName] = useState('');
  if (!file) return null;
  const latitudeDeg = typedNumber(latitude);
  const longitudeDeg = typedNumber(longitude);
  const isSound =
    latitudeDeg !== null &&
    Math.abs(latitudeDeg) <= 90 &&
    longitudeDeg !== null &&
    Math.abs(longitudeDeg) <= 180;
  const ask = () => {
    if (!isSound) return;
    const hints = { latitudeDeg, longitudeDeg, ...(name.trim() === '' ? {} : { name: name.trim() }) };
    void session.openFile(file, hints);
  };
  return (
    <form
      class="place-question"
      aria-labelledby="place-question-title"
      onSubmit={(event) => {
        event.preventDefault();
        ask();
      }}
    >
      <p id="place-question-title">{file.name} holds weather but does not say where it is from.</p>
      <label>
        Latitude, north positive, −90 to 90°
        <input
          type="text"
          inputMode="decimal"
          value={latitude}
          onInput={(e) => setLatitude(e.currentTarget.value)}
        />
      </label>
      <label>
        Longitude, east positive, −180 to 180°
        <input
          type="text"
          inputMode="decimal"
          value={longitude}
          onInput={(e) => setLongitude(e.currentTarget.value)}
        />
      </label>
      <label>
        Name of the place
        <input type="text" maxLength={60} value={name} onInput={(e) => setName(e.currentTarget.value)} />
      </label>
      <button type="submit" disabled={!isSound}>
        Read the file
      </button>
      <button
        type="button"
        onClick={() => {
          session.placeless.value = null;
        }}
      >
        Leave it
      </button>
    </form>
  );
}
