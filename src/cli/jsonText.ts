/**
 * Where a text stops being JSON, by line and column, and a key that an object has twice: JSON.parse tells the first only in words that
 * differ from version to version, and takes the last of two keys in silence.
 */
export interface JsonProblem {
  readonly kind: 'notJson' | 'keyTwice';
  readonly line: number;
  readonly column: number;
  /** The key that stands twice, or what stands where it should not; empty at the end of the text. */
  readonly found: string;
}

const space = /[ \t\r\n]*/y;
// biome-ignore lint/suspicious/noControlCharactersInRegex: JSON forbids them raw inside a text, and this is where that is seen
const string = /"(?:[^"\\\u0000-\u001f]+|\\(?:["\\/bfnrt]|u[0-9a-fA-F]{4}))*"/y;
const plain = /(?:true|false|null|-?(?:0|[1-9]\d*)(?:\.\d+)?(?:[eE][+-]?\d+)?)(?![\w.+-])/y;

type Expect = 'value' | 'valueOrEnd' | 'key' | 'keyOrEnd' | 'colon' | 'commaOrEnd' | 'nothing';

/** A group that is open: the keys of an object, or null for a list. */
type Open = Set<string> | null;

class Reader {
  private at = 0;
  private readonly open: Open[] = [];
  private expect: Expect = 'value';
  private readonly text: string;

  constructor(text: string) {
    this.text = text;
  }

  private take(form: RegExp): string | null {
    form.lastIndex = this.at;
    const found = form.exec(this.text)?.[0] ?? null;
    if (found !== null) this.at += found.length;
    return found;
  }

  private ended(): void {
    this.expect = this.open.length === 0 ? 'nothing' : 'commaOrEnd';
  }

  private value(): boolean {
    const char = this.text[this.at];
    if (char === '{' || char === '[') {
      this.at += 1;
      this.open.push(char === '{' ? new Set() : null);
      this.expect = char === '{' ? 'keyOrEnd' : 'valueOrEnd';
      return true;
    }
    if (this.take(string) === null && this.take(plain) === null) return false;
    this.ended();
    return true;
  }

  private close(mark: string): boolean {
    const inObject = this.open.at(-1) !== null;
    if (mark !== (inObject ? '}' : ']')) return false;
    this.at += 1;
    this.open.pop();
    this.ended();
    return true;
  }

  private punctuation(mark: string, next: Expect): boolean {
    if (this.text[this.at] !== mark) return false;
    this.at += 1;
    this.expect = next;
    return true;
  }

  /** One step on; false where the text is not JSON, a key where it stands twice. */
  private step(): boolean | { readonly twice: string; readonly at: number } {
    const mark = this.text[this.at] ?? '';
    switch (this.expect) {
      case 'value':
        return this.value();
      case 'valueOrEnd':
        return mark === ']' ? this.close(mark) : this.value();
      case 'keyOrEnd':
        return mark === '}' ? this.close(mark) : this.key();
      case 'key':
        return this.key();
      case 'colon':
        return this.punctuation(':', 'value');
      case 'commaOrEnd':
        return mark === ',' ? this.punctuation(',', this.open.at(-1) === null ? 'value' : 'key') : this.close(mark);
      case 'nothing':
        return false;
    }
  }

  private key(): boolean | { readonly twice: string; readonly at: number } {
    const { at } = this;
    const key = this.take(string);
    const keys = this.open.at(-1);
    if (key === null || !keys) return false;
    const name = String(JSON.parse(key));
    if (keys.has(name)) return { twice: name, at };
    keys.add(name);
    this.expect = 'colon';
    return true;
  }

  problem(): JsonProblem | null {
    for (;;) {
      this.take(space);
      if (this.at >= this.text.length && this.expect === 'nothing') return null;
      const went = this.at >= this.text.length ? false : this.step();
      if (went === true) continue;
      if (went === false) return this.problemAt('notJson', this.at, this.text.slice(this.at, this.at + 12));
      return this.problemAt('keyTwice', went.at, went.twice);
    }
  }

  private problemAt(kind: JsonProblem['kind'], at: number, found: string): JsonProblem {
    const before = this.text.slice(0, at).split('\n');
    return { kind, line: before.length, column: (before.at(-1)?.length ?? 0) + 1, found: found.split(/\s/)[0] ?? '' };
  }
}

/** null when the text is JSON in which no object has a key twice. */
export const jsonProblem = (text: string): JsonProblem | null => new Reader(text).problem();
