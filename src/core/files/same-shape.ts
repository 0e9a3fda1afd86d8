/** True while two shapes agree field by field: the compile-time proof that a schema reads what the core means. */
export type Same<A, B> = Alike<Open<A>, Open<B>>;

type Alike<A, B> = (<T>() => T extends A ? 1 : 2) extends <T>() => T extends B ? 1 : 2 ? true : false;
/** Without readonly and with interfaces and intersections spelled out. */
type Open<T> = T extends object ? { -readonly [K in keyof T]: Open<T[K]> } : T;
