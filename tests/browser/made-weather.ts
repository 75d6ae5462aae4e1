// Weather files made up for the browser tests.

/** A made-up year as a bare table: temperature, dew point, wind and a sun that rises at six and sets at six. */
export function warmTable(): string {
  const rows = [
    'Date (MM/DD/YYYY),Time (HH:MM),Dry-bulb (C),Dew-point (C),Pressure (mbar),Wspd (m/s),GHI (W/m^2)',
  ];
  for (let hour = 0; hour < 8760; hour++) {
    const day = new Date(Date.UTC(2001, 0, 1 + Math.floor(hour / 24)));
    const date = `${day.getUTCMonth() + 1}/${day.getUTCDate()}/2001`;
    const clock = (hour % 24) + 1;
    const sun = Math.max(0, Math.sin(((clock - 0.5 - 6) / 12) * Math.PI)) * 700;
    const warm = 16 + 8 * Math.sin(((clock - 9) / 12) * Math.PI);
    rows.push(`${date},${String(clock).padStart(2, '0')}:00,${warm.toFixed(1)},5,850,2,${sun.toFixed(0)}`);
  }
  return rows.join('\n');
}
