/** A server that ends by itself is started anew, but not for ever: this counts. Times in milliseconds. */
export class RestartLimit {
  #ends: number[] = [];

  constructor(
    private readonly most = 5,
    private readonly within = 3 * 60_000,
  ) {}

  /** Notes an end; false when it was one too many of late. */
  allows(now: number): boolean {
    this.#ends = [...this.#ends.filter((end) => now - end < this.within), now];
    return this.#ends.length < this.most;
  }
}
