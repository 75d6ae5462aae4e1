// The browser's own stores, which may be denied outright: reading the property already throws where a person blocks
// site data, and some windows have none. In: how to reach it. Out: a store that reads nothing and refuses to keep.

/** The part of Storage that is used; a test brings its own. */
export type Store = Pick<Storage, 'getItem' | 'setItem'>;

/**
 * A store that never throws while reading; writing throws where nothing can be kept.
 *
 * @param reach e.g. () => localStorage
 */
export function browserStore(reach: () => Storage | null | undefined): Store {
  const found = () => {
    try {
      return reach() ?? null;
    } catch {
      return null;
    }
  };
  return {
    getItem(key) {
      try {
        return found()?.getItem(key) ?? null;
      } catch {
        return null;
      }
    },
    setItem(key, value) {
      const store = found();
      if (store === null) throw new Error('this browser keeps nothing for this page');
      store.setItem(key, value);
    },
  };
}
