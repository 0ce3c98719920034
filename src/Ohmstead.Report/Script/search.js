"use strict";
// What the search does. It is loaded when somebody searches, and loads of the index what a query needs, as scripts: pages from disk may load
// nothing else. A text is taken apart here as the program takes it apart; the tables for that stand in the index.
(() => {
  const from = document.currentScript.src;
  const loading = new Map();
  const load = name => {
    if (!loading.has(name)) {
      loading.set(name, new Promise((resolve, reject) => {
        const file = document.createElement("script");
        file.src = new URL(`search/${name}.js`, from).href;
        file.addEventListener("load", () => resolve(globalThis.ohmsteadPieces[name]));
        file.addEventListener("error", () => {
          loading.delete(name);
          reject(new Error(`${name} is missing`));
        });
        document.head.append(file);
      }));
    }
    return loading.get(name);
  };

  const tables = index => {
    const exact = new Map();
    const anyCase = new Map();
    const put = (map, key, unit) => map.set(key, [...map.get(key) ?? [], ...(map.get(key) ?? []).some(one => one.join() === unit.join()) ? [] : [unit]]);
    for (const [spelling, ...unit] of index.units) {
      put(exact, spelling, unit);
      put(anyCase, spelling.toLowerCase(), unit);
    }
    const codes = new Map();
    for (const [letter, ...code] of index.codes) {
      put(codes, letter, code);
    }
    return { exact, anyCase, codes, most: index.most, plain: index.plain, stops: new Set(index.stops) };
  };

  const letter = "\\p{L}\\p{Nd}\\u{10000}-\\u{10FFFF}";
  const end = `(?![${letter}])`;
  const month = "(?<n>jan(?:uary)?|feb(?:ruary)?|mar(?:ch)?|apr(?:il)?|may|june?|july?|aug(?:ust)?|sept?(?:ember)?|oct(?:ober)?|nov(?:ember)?|dec(?:ember)?)";
  const months = "jan feb mar apr may jun jul aug sep oct nov dec";
  const days = [
    new RegExp(`(?<y>[12][0-9]{3})-(?<m>[0-9]{2})(?:-(?<d>[0-9]{2}))?(?!-)${end}`, "yiu"),
    new RegExp(`(?<d>[0-9]{1,2})(?:st|nd|rd|th)?\\.? ${month}${end}(?:\\.?,? (?<y>[12][0-9]{3})${end})?`, "yiu"),
    new RegExp(`(?<d>[0-9]{1,2})[./](?<m>[0-9]{1,2})[./](?<y>[12][0-9]{3})${end}`, "yiu"),
    new RegExp(`${month}\\.? (?<d>[0-9]{1,2})(?:st|nd|rd|th)?${end}(?:,? (?<y>[12][0-9]{3})${end})?`, "yiu"),
    new RegExp(`${month}\\.? (?<y>[12][0-9]{3})${end}`, "yiu"),
  ];
  const isLetter = new RegExp(`[${letter}]`, "u");
  const run = new RegExp(`[${letter}]+`, "yu");
  const code = new RegExp(`(?<w>[0-9]+)(?<l>[A-Za-z\u03a9])(?<f>[0-9]+)(?: ?(?<u>[A-Za-z\u03a9]+))?${end}`, "yu");
  const figure = /[0-9]+(?:\.[0-9]+)?|\.[0-9]+/yu;
  const unitBehind = new RegExp(` ?(?<u>\u00b0C|%|\u2030|[A-Za-z\u03a9]+)${end}`, "yu");

  const mostPieces = 8;

  const match = (pattern, text, at) => {
    pattern.lastIndex = at;
    return pattern.exec(text);
  };
  const two = number => String(number).padStart(2, "0");
  const small = text => text.toLowerCase();
  const hasDigit = text => /[0-9]/u.test(text);
  const canonical = text => text.replace(/(?<![0-9])0+(?=[0-9])/gu, "");
  const item = (kind, token, beside = [], asked = [[token]]) => ({ kind, token, beside, asked });

  const reader = ({ exact, anyCase, codes, most, plain: letters, stops }) => {
    const plain = text => [...text].map(c => letters[c] ?? (c >= "\u0300" && c <= "\u036f" ? "" : c)).join("");

    // The value as a whole number without zeros at its end, and a power of ten.
    const tokenOf = (number, [sign, power, multiplier = 1]) => {
      const [whole, rest = ""] = number.split(".");
      const digits = String(BigInt(whole + rest) * BigInt(multiplier));
      const trimmed = digits.replace(/0+$/u, "");
      if (trimmed === "") {
        return `=0${sign}`;
      }
      const exponent = power - rest.length + digits.length - trimmed.length;
      return trimmed.length > 28 || Number(`${trimmed}e${exponent}`) > most[sign] ? null : `=${trimmed}e${exponent}${sign}`;
    };
    const unitsOf = text => exact.get(text) ?? anyCase.get(small(text)) ?? [];
    const found = (number, units) => [...new Set(units.map(unit => tokenOf(number, unit)).filter(token => token))];

    const readDay = (text, at) => {
      for (const pattern of days) {
        const groups = match(pattern, text, at)?.groups;
        if (!groups) {
          continue;
        }
        const stop = pattern.lastIndex;
        const [y, d] = [Number(groups.y ?? 0), Number(groups.d ?? 0)];
        const word = groups.n && small(groups.n);
        const m = word ? months.indexOf(word.slice(0, 3)) / 4 + 1 : Number(groups.m);
        if (m < 1 || m > 12 || d > 31 || groups.d && d === 0 || !y && !d) {
          continue;
        }
        const ofYear = `@${y}-${two(m)}`;
        const anyYear = `@-${two(m)}-${two(d)}`;
        const token = !y ? anyYear : d ? `${ofYear}-${two(d)}` : ofYear;
        return [item("day", token, [...y ? [String(y), ...d ? [ofYear, anyYear] : []] : [], ...word ? [word] : []]), stop];
      }
      return null;
    };

    const readCode = (text, at) => {
      const groups = match(code, text, at)?.groups;
      if (!groups) {
        return null;
      }
      const { w, l, f, u = "" } = groups;
      const stop = code.lastIndex;
      const bare = at + w.length + l.length + f.length;
      const coded = (behind, stopAt) => {
        const units = (codes.get(l) ?? []).filter(([sign]) => behind === "" || (exact.get(behind) ?? []).some(unit => unit[0] === sign && unit[1] === 0 && unit[2] === 1));
        const tokens = found(`${w}.${f}`, units);
        const name = canonical(small(w + l + f));
        return tokens.length > 0 && [item("quantity", tokens[0], [...tokens.slice(1), name], [...tokens.map(token => [token]), [name]]), stopAt];
      };
      return coded(u, stop) || u !== "" && text[bare] === " " && coded("", bare) || null;
    };

    const isWithin = (text, at) => (text[at] === "-" || text[at] === "_") && isLetter.test(text.slice(at + 1, at + 3)[0] ?? "");
    const letterAt = (text, at) => match(run, text, at) !== null;

    const readFigure = (text, at) => {
      const number = match(figure, text, at)?.[0];
      if (number === undefined) {
        return null;
      }
      const coded = readCode(text, at);
      if (coded) {
        return coded;
      }
      const [whole, rest = ""] = number.split(".");
      const short = rest.replace(/0+$/u, "");
      const plainNumber = (whole.replace(/^0+/u, "") || "0") + (short && `.${short}`);
      const after = at + number.length;
      const behind = match(unitBehind, text, after);
      if (behind) {
        let unit = behind.groups.u;
        let stop = unitBehind.lastIndex;
        if (text.startsWith("/s", stop) && unitsOf(`${unit}/s`).length > 0) {
          unit += "/s";
          stop += 2;
        }
        const minus = at > 0 && text[at - 1] === "-" && (at === 1 || !isLetter.test(text[at - 2])) ? "-" : "";
        const tokens = found(number, unitsOf(unit));
        if (tokens.length > 0) {
          const word = small(unit);
          const signed = tokens.map(token => minus + token);
          return [item(
            "quantity",
            signed[0],
            [...signed.slice(1), ...minus ? tokens : [], plainNumber, .../^[a-z]{3,}$/u.test(word) ? [word] : []],
            [...signed.map(token => [token]), ...text[after] === " " ? [[plainNumber, word]] : []],
          ), stop];
        }
      }
      return isWithin(text, after) || letterAt(text, after) ? null : [item("number", plainNumber), after];
    };

    const join = (left, right) => /[0-9]$/u.test(left) === /^[0-9]/u.test(right) ? `${left}-${right}` : left + right;
    const readRun = (text, at) => {
      let stop = text[at] === "." ? at + 1 : at;
      const pieces = [];
      for (;;) {
        pieces.push(canonical(small(match(run, text, stop)[0])));
        stop = run.lastIndex;
        if (pieces.length === mostPieces || !(text[stop] === "-" || text[stop] === "_") || !letterAt(text, stop + 1)) {
          break;
        }
        stop++;
      }
      if (pieces.length === 1) {
        return [item(!hasDigit(pieces[0]) ? "word" : /^[0-9]+$/u.test(pieces[0]) ? "number" : "name", pieces[0]), stop];
      }
      if (!pieces.some(hasDigit)) {
        return [item("words", pieces[0], pieces.slice(1), [pieces]), stop];
      }
      const whole = pieces.reduce(join);
      const pairs = pieces.length === 2 ? [] : pieces.slice(1).map((piece, place) => [pieces[place], piece]).filter(pair => pair.some(hasDigit)).map(pair => join(...pair));
      return [item("name", whole, [...new Set([...pieces, ...pairs].filter(piece => !stops.has(piece)))], [[whole], pieces]), stop];
    };

    return text => {
      const read = plain(text);
      const items = [];
      let at = 0;
      while (at < read.length) {
        if (!letterAt(read, at) && !(read[at] === "." && /[0-9]/u.test(read[at + 1] ?? ""))) {
          at++;
          continue;
        }
        const [one, stop] = readDay(read, at) ?? readFigure(read, at) ?? readRun(read, at);
        items.push(one);
        at = stop;
      }
      return items;
    };
  };

  const whenReady = load("index").then(index => {
    const all = tables(index);
    return { index, stops: all.stops, read: reader(all) };
  });

  // A piece of the index is its text and what the signs in it stand for.
  const unpacked = new Map();
  const listOf = async (index, name, read) => {
    const [text, ...pieces] = await load(name);
    if (!unpacked.has(name)) {
      unpacked.set(name, read(text.replace(/[+&]./gu, ([start, end]) => pieces[index.starts.indexOf(start) * index.ends.length + index.ends.indexOf(end)])));
    }
    return unpacked.get(name);
  };
  const wordsOf = (index, name) => listOf(index, name, text => JSON.parse(`"${text}"`).split(" "));
  const pagesOf = (index, name) => listOf(index, name, text => JSON.parse(`[${text}]`));

  // The last place at which a sorted list is not beyond.
  const placeIn = (list, wanted) => {
    let [low, high] = [0, list.length];
    while (low < high) {
      const middle = (low + high) >> 1;
      if (list[middle] <= wanted) {
        low = middle + 1;
      } else {
        high = middle;
      }
    }
    return low - 1;
  };

  // Which pages hold a token, each with the sentences; null for any of them.
  const decode = postings => {
    const held = new Map();
    let page = -1;
    for (const [, gap, letters] of postings.matchAll(/([0-9a-z]+)([A-Z]+|\*)/gu)) {
      page += parseInt(gap, 36);
      let sentences = null;
      if (letters !== "*") {
        sentences = new Set();
        let sentence = -1;
        for (const one of letters) {
          const step = one.charCodeAt(0) - 65;
          sentence += step === 25 ? 25 : step + 1;
          if (step !== 25) {
            sentences.add(sentence);
          }
        }
      }
      held.set(page, sentences);
    }
    return held;
  };

  const entries = async (index, wanted, isPrefix) => {
    const taken = [];
    for (let piece = Math.max(0, placeIn(index.words, wanted)); piece < index.words.length && (piece === 0 || index.words[piece] <= wanted || isPrefix && index.words[piece].startsWith(wanted)); piece++) {
      const list = await wordsOf(index, `w${piece + 1}`);
      for (let at = 0; at < list.length; at += 2) {
        if (list[at] === wanted || isPrefix && list[at].startsWith(wanted) && /^\p{L}+$/u.test(list[at])) {
          taken.push([list[at], list[at + 1]]);
        }
      }
    }
    return taken;
  };

  // Whether one letter more, less or other, or two that changed places, makes one word of the other.
  const isSlip = (left, right) => {
    let at = 0;
    while (at < left.length && left[at] === right[at]) {
      at++;
    }
    const [a, b] = [left.slice(at), right.slice(at)];
    return a.slice(1) === b.slice(1) || a.slice(1) === b || a === b.slice(1) || a.length > 1 && a[0] === b[1] && a[1] === b[0] && a.slice(2) === b.slice(2);
  };
  const slipped = async (index, word) => {
    const near = [];
    for (let piece = 0; piece < index.spellings.length; piece++) {
      if (index.spellings[piece] <= word.length + 1 && (index.spellings[piece + 1] ?? Infinity) >= word.length - 1) {
        near.push(...(await wordsOf(index, `s${piece + 1}`)).filter(other => isSlip(word, other)));
      }
    }
    return near;
  };

  // What one stretch of a query finds: by page, in which sentences and how well (0 as asked, 1 as the start of a word, 2 with a slip).
  const finder = ({ index, stops }) => {
    const add = (clause, entry, quality) => {
      clause.tokens.add(entry[0]);
      for (const [page, sentences] of decode(entry[1])) {
        const there = clause.pages.get(page);
        if (!there) {
          clause.pages.set(page, { sentences: sentences && new Set(sentences), quality });
        } else {
          there.quality = Math.min(there.quality, quality);
          there.sentences = there.sentences && sentences && new Set([...there.sentences, ...sentences]);
        }
      }
    };
    const clauseOf = async (token, isTypo) => {
      const clause = { tokens: new Set(), pages: new Map() };
      for (const entry of await entries(index, token, false)) {
        add(clause, entry, 0);
      }
      if (/^\p{L}{4,}$/u.test(token)) {
        for (const entry of await entries(index, token, true)) {
          add(clause, entry, entry[0] === token ? 0 : 1);
        }
        if (token.length >= 5 && (isTypo || clause.pages.size === 0)) {
          for (const near of await slipped(index, token)) {
            for (const entry of await entries(index, near, false)) {
              add(clause, entry, entry[0] === token ? 0 : 2);
            }
          }
        }
      }
      return clause;
    };
    const union = clauses => {
      const all = { tokens: new Set(clauses.flatMap(clause => [...clause.tokens])), pages: new Map() };
      for (const [page, held] of clauses.flatMap(clause => [...clause.pages])) {
        const there = all.pages.get(page);
        all.pages.set(page, !there ? held : { quality: Math.min(there.quality, held.quality), sentences: there.sentences && held.sentences && new Set([...there.sentences, ...held.sentences]) });
      }
      return all;
    };
    const kept = tokens => tokens.filter(token => !stops.has(token));

    // Of the meanings of a name the first that is anywhere counts; of a quantity, all.
    return async (items, isTypo) => {
      const clauses = [];
      for (let at = 0; at < items.length; at++) {
        const one = items[at];
        const next = items[at + 1];
        if (one.kind === "word" && (next?.kind === "number" || next?.kind === "name")) {
          const joined = await clauseOf(/^[0-9]/u.test(next.token) ? one.token + next.token : `${one.token}-${next.token}`, false);
          if (joined.pages.size > 0) {
            clauses.push(joined);
            at++;
            continue;
          }
        }
        const meanings = one.asked.map(kept).filter(tokens => tokens.length > 0);
        const of = async tokens => Promise.all(tokens.map(token => clauseOf(token, isTypo)));
        if (one.kind === "quantity") {
          const single = union((await Promise.all(meanings.filter(tokens => tokens.length === 1).map(of))).flat());
          const apart = meanings.find(tokens => tokens.length > 1);
          clauses.push(...single.pages.size === 0 && apart ? await of(apart) : [single]);
          continue;
        }
        let held = [];
        for (const tokens of meanings) {
          held = await of(tokens);
          if (held.every(clause => clause.pages.size > 0)) {
            break;
          }
        }
        clauses.push(...held);
      }
      return clauses;
    };
  };

  const pageOf = async (index, page) => {
    const piece = placeIn(index.pages, page);
    const [name, title, about, address, places, flat] = (await pagesOf(index, `p${piece + 1}`))[page - index.pages[piece]];
    const sentences = [];
    for (let at = 0; at < flat.length; at += 2) {
      const [head, anchor] = places.slice(2 * flat[at]);
      const text = flat[at + 1];
      sentences.push({ head, anchor: anchor === "@" ? `p-${text.split(/[ ,]/u, 1)[0]}` : anchor, text });
    }
    return { name, title, about, address, sentences };
  };

  // Pages on which every clause is found; a part of a design is on each of its boards.
  const candidates = (index, clauses, named) => {
    const designOf = new Map();
    for (const [design, ...gaps] of index.designs) {
      let board = 0;
      for (const gap of gaps) {
        board += gap;
        designOf.set(board, design);
      }
    }
    const reach = clause => {
      const all = new Map(clause.pages);
      for (const [board, design] of designOf) {
        const held = clause.pages.get(design);
        if (held && !all.has(board)) {
          all.set(board, { sentences: new Set(), quality: held.quality + 0.5, design });
        }
      }
      return all;
    };
    const reached = clauses.map(reach).sort((a, b) => a.size - b.size);
    const hits = [];
    for (const page of reached[0]?.keys() ?? []) {
      const held = reached.map(pages => pages.get(page));
      if (held.some(one => one === undefined)) {
        continue;
      }
      const known = held.map(one => one.sentences).filter(sentences => sentences);
      const together = known.length === 0 ? null : known.reduce((left, right) => new Set([...left].filter(sentence => right.has(sentence))));
      hits.push({
        page,
        design: held.find(one => one.design)?.design,
        isNamed: named.whole.has(page),
        isAbout: named.parts.has(page),
        isApart: together !== null && together.size === 0,
        quality: Math.max(...held.map(one => one.quality)),
        sentences: together && together.size > 0 ? together : null,
      });
    }
    return hits.sort((a, b) => b.isNamed - a.isNamed || b.isAbout - a.isAbout || a.isApart - b.isApart || a.quality - b.quality || a.page - b.page);
  };

  const looked = 8;
  const tokensOf = (read, text) => new Set(read(text).flatMap(one => [one.token, ...one.beside]));

  // Of a page the sentence that holds most of what was asked, as it was asked.
  const told = async ({ index, read }, hit, clauses, phrase) => {
    const page = await pageOf(index, hit.page);
    let best = null;
    const look = (sentence, place, isOwn) => {
      const tokens = tokensOf(read, `${sentence.head} ${sentence.text}`);
      const held = clauses.filter(clause => [...clause.tokens].some(token => tokens.has(token))).length;
      const isPhrase = phrase.includes(" ") && ` ${read(sentence.text).map(one => one.token).join(" ")} `.includes(` ${phrase} `);
      const weight = held * 4 + (isPhrase ? 2 : 0) + (isOwn ? 1 : 0);
      if (!best || weight > best.weight) {
        best = { weight, held, isPhrase, ...sentence };
      }
    };
    page.sentences.forEach((sentence, place) => (hit.sentences === null || hit.sentences.has(place)) && look(sentence, place, true));
    if (hit.design !== undefined && (best?.held ?? 0) < clauses.length) {
      (await pageOf(index, hit.design)).sentences.forEach(sentence => look({ ...sentence, anchor: sentence.anchor.startsWith("p-") ? sentence.anchor : "" }, 0, false));
    }
    const place = best?.anchor ? `#${encodeURIComponent(best.anchor)}` : "";
    return { ...hit, ...page, best, address: page.address.includes("#") ? page.address : page.address + (hit.isNamed ? "" : place) };
  };
  // What presses before what a page is called, and both before all other words.
  const pressing = new Set(["s-evidence", "s-waits", "s-findings"]);
  const naming = new Set(["", "s-identity", "s-whereabouts"]);
  const rankOf = ({ anchor }) => pressing.has(anchor) ? 0 : naming.has(anchor) ? 1 : 2;
  const byWeight = (a, b) => b.isNamed - a.isNamed || b.isAbout - a.isAbout || b.best.held - a.best.held || b.best.isPhrase - a.best.isPhrase
    || a.quality - b.quality || rankOf(a.best) - rankOf(b.best) || a.page - b.page;

  // What is found, group by group: how many, and of the first ones what they say. More of a group are told when asked for.
  const find = async text => {
    const ready = await whenReady;
    const { index, stops, read } = ready;
    const items = read(text).filter(one => !stops.has(one.token) || one.asked.some(tokens => tokens.length > 1));
    if (items.length === 0) {
      return null;
    }
    const tokens = items.flatMap(one => one.asked[0].filter(token => !stops.has(token)));
    const named = { whole: new Set(), parts: new Set() };
    // Asked for at once, so that one file need not wait for the other.
    [...tokens, `!${tokens.join("_")}`].forEach(token => load(`w${Math.max(0, placeIn(index.words, token)) + 1}`).catch(() => {}));
    const seek = finder(ready);
    let clauses = await seek(items, false);
    // Pages that are called what was asked, with a space or without; and those that a name among other words means.
    const pairs = tokens.slice(1).map((token, place) => tokens[place] + token);
    const parts = [...items.filter(one => one.kind === "name").map(one => one.token), ...pairs];
    for (const [set, names] of [[named.whole, [tokens.join("_"), ...tokens.length === 2 ? pairs : []]], [named.parts, parts]]) {
      for (const one of names) {
        for (const [, postings] of await entries(index, `!${one}`, false)) {
          decode(postings).forEach((_, page) => set.add(page));
        }
      }
    }
    let hits = candidates(index, clauses, named);
    if (hits.length === 0) {
      clauses = await seek(items, true);
      hits = candidates(index, clauses, named);
    }
    const phrase = items.map(one => one.token).join(" ");
    const words = new Set(clauses.flatMap(clause => [...clause.tokens]));
    const groups = [];
    for (const [place, [group, first]] of index.groups.entries()) {
      const beyond = index.groups[place + 1]?.[1] ?? index.count;
      const here = hits.filter(hit => hit.page >= first && hit.page < beyond);
      if (here.length > 0) {
        const start = (await Promise.all(here.slice(0, looked).map(hit => told(ready, hit, clauses, phrase)))).sort(byWeight);
        groups.push({ group, count: here.length, hits: start, rest: (skip, most) => Promise.all(here.slice(skip, skip + most).map(hit => told(ready, hit, clauses, phrase))) });
      }
    }
    groups.sort((a, b) => byWeight({ ...a.hits[0], page: 0 }, { ...b.hits[0], page: 0 }));
    return { count: hits.length, groups, isHeld: chunk => read(chunk).some(one => [one.token, ...one.beside].some(token => words.has(token))) };
  };

  // What is found as elements: text goes in as text.
  const shownAtOnce = 4;
  const shownMore = 40;
  const headings = { Lots: "Drawer" };
  const root = new URL(".", from);
  const make = (name, attributes, ...content) => {
    const element = document.createElement(name);
    for (const [key, value] of Object.entries(attributes)) {
      element.setAttribute(key, value);
    }
    element.append(...content);
    return element;
  };
  const marked = (text, isHeld) => text.split(/(\s+)/u).map(chunk => chunk.trim() && isHeld(chunk) ? make("mark", {}, chunk) : chunk);
  const lineOf = ({ best, name, title, about, address }, isHeld) => {
    const isSaid = best?.text.startsWith(name);
    return make("li", {},
      make("a", { href: new URL(address, root).href }, name), " ",
      ...isSaid ? [] : [`${title}${about && ` (${about})`}. `],
      ...best ? marked(`${best.head && `${best.head}: `}${isSaid ? best.text.slice(name.length).trimStart() : best.text}`, isHeld) : []);
  };
  const drawn = ({ group, count, hits, rest }, isHeld, id) => {
    const rows = make("ul", { "aria-labelledby": id }, ...hits.slice(0, shownAtOnce).map(hit => lineOf(hit, isHeld)));
    const parts = [make("p", { id }, `${headings[group] ?? group} `, make("small", {}, String(count))), rows];
    let shown = Math.min(count, shownAtOnce);
    if (count > shown) {
      const more = make("button", { type: "button" }, `${count - shown} more`);
      more.addEventListener("click", async () => {
        const start = rows.children.length;
        // The first ones were looked through in any case, and are in order already.
        const next = shown < hits.length ? hits.slice(shown) : await rest(shown, shownMore);
        shown += next.length;
        rows.append(...next.map(hit => lineOf(hit, isHeld)));
        more.textContent = `${count - shown} more`;
        more.hidden = shown >= count;
        rows.children[start]?.querySelector("a").focus();
      });
      parts.push(more);
    }
    return make("div", {}, ...parts);
  };
  const answer = async text => {
    const found = await find(text);
    return {
      told: found ? `${found.count || "nothing"} found` : "type a word, a number or a quantity",
      groups: (found?.groups ?? []).map((group, place) => drawn(group, found.isHeld, `found-${place}`)),
    };
  };

  globalThis.ohmsteadSearch = { answer, find, read: text => whenReady.then(({ read }) => read(text)) };
})();
