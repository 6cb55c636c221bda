/** A page with one of each fault planted in it, and the words by which each is told: checks that see nothing would pass everything. */

export const faultyPage = `<!doctype html>
<html lang="de"><head><title>Elsewhere</title><style>
  body { background: #ffffff; color: #000000; margin: 0 }
  .foot { background: #eeeeee; block-size: 60vh; bottom: 0; position: sticky }
</style></head><body><main>
  <a id="under" href="#x" style="display: block; outline: none; position: absolute; inset-block-start: 70vh">Under the foot</a>
  <h1>First</h1><h1>Second</h1><h3>Skipped a level</h3>
  <button style="block-size: 20px; padding: 0">Low</button>
  <a data-action="main" href="#y" style="display: block; block-size: 50px">Low main</a>
  <p style="color: #8a8a8a">Grey</p>
  <p style="opacity: 0.5">Half</p>
  <p style="font-size: 12px">Small</p>
  <button data-action="quiet" style="border: 1px solid #dddddd">Pale edge</button>
  <label for="a">Flow, L/min</label><input id="a" type="number">
  <label for="b">Volume, L</label><input id="b" type="text" placeholder="12">
  <label for="c">Mass</label><input id="c" type="text" inputmode="decimal">
  <input id="d" type="text">
  <div style="inline-size: 3000px">Wide</div>
  <div style="inline-size: 60px; overflow: hidden; white-space: nowrap">Longer than its box by far</div>
  <p style="block-size: 10px">Text below its box</p>
  <div class="foot" data-part="foot">Foot</div>
</main></body></html>`;

export const faults: readonly string[] = [
  'headings of the first level',
  'is another',
  'language of the document',
  'heading of level 3 after level 1',
  'target of',
  'main action too low',
  'text at 3.',
  'half-transparent',
  'text of 12px',
  'edge at 1.',
  'a field of type number',
  'words inside a field',
  'no inputmode: Volume, L',
  'no unit in the label: Mass',
  'a field without a label',
  'small type in a field',
  'page 3000 wide',
  'wide in 60',
  'text outside of its box',
  'the foot takes 60 %',
  'no ring of 3 px',
  'hidden under',
];
