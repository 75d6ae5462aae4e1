// Worked out once for each thing it is asked of, and remembered as long as that thing lives.

/** A function that asks `make` once per key. */
export function oncePer<K extends object, V>(make: (key: K) => V): (key: K) => V {
  const known = new WeakMap<K, V>();
  return (key) => {
    if (!known.has(key)) known.set(key, make(key));
    return known.get(key)!;
  };
}
