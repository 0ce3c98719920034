"use strict";
// Sorting, filtering and searching. The pages hold everything without it, in the order of the records.
(() => {
  const root = new URL(".", document.currentScript.src);
  const collator = new Intl.Collator("en", { numeric: true, sensitivity: "base" });
  const scales = { p: 1e-12, n: 1e-9, u: 1e-6, "\u00b5": 1e-6, "\u03bc": 1e-6, m: 1e-3, "": 1, k: 1e3, M: 1e6, G: 1e9, T: 1e12 };
  const quantity = /^([-+\u2212]?\d+(?:\.\d+)?)(?:\s*([pnu\u00b5\u03bcmkMGT]?)(?:F|\u03a9|V|A|H|Hz|s|h|W|J|%|\u00b0C))?$/u;
  const leastToFilter = 8;
  // A handful of rows is seen at once: buttons over them are only in the way.
  const leastToSort = 5;
  const mostRows = 100;
  const tools = [];

  const make = (name, attributes = {}, ...content) => {
    const element = document.createElement(name);
    for (const [key, value] of Object.entries(attributes)) {
      element.setAttribute(key, value);
    }
    element.append(...content);
    return element;
  };
  const wordsOf = text => text.toLowerCase().split(/\s+/u).filter(word => word);
  const slug = text => text.trim().toLowerCase().replace(/[^\p{L}\p{N}]+/gu, "-");
  const count = (number, one, more) => `${number} ${number === 1 ? one : more}`;

  // What was asked for stands in the fragment, which may change on pages from disk too; no anchor of a page has an equals sign in it.
  const isAnchor = () => location.hash.length > 1 && !location.hash.includes("=");
  const asked = () => new URLSearchParams(isAnchor() ? "" : location.hash.slice(1));
  const ask = (name, value) => {
    const all = asked();
    const isTyping = all.has(name) && value && !name.endsWith(".by");
    all.delete("");
    if (value) {
      all.set(name, value);
    } else {
      all.delete(name);
    }
    // A lone # would lead to the top of the page.
    const target = `#${all.toString() || "="}`;
    if (isTyping) {
      location.replace(target);
    } else {
      location.hash = target;
    }
  };

  const said = make("output", { "data-said": "" });

  // What a cell is sorted by: its number where it has one, and its text.
  const keyOf = (order, words) => {
    if (order !== undefined) {
      return [Number(order), ""];
    }
    const text = words.trim().slice(0, 120);
    const match = quantity.exec(text);
    return [match ? Number(match[1].replace("\u2212", "-")) * scales[match[2] ?? ""] : NaN, text];
  };
  const keyOfCell = cell => keyOf(cell.dataset.order, cell.textContent);

  // Names and dates of one form are told apart letter by letter, which is many times faster than by the rules of a language.
  const isUniform = words => words.every(word => word.length === words[0].length && /^[-0-9A-Z]*$/u.test(word));

  const sorted = (rows, keyOfRow, isDown) => {
    const keyed = rows.map((row, place) => [row, place, ...keyOfRow(row)]);
    const isEmpty = key => Number.isNaN(key[2]) && key[3] === "";
    const filled = keyed.filter(key => !isEmpty(key));
    const isNumber = filled.every(key => !Number.isNaN(key[2]));
    const sign = isDown ? -1 : 1;
    if (isNumber) {
      filled.sort((a, b) => sign * (a[2] - b[2]) || a[1] - b[1]);
    } else {
      // A board's name stands behind its number, which decides.
      filled.forEach(key => key.push(key[3].split(" ", 1)[0]));
      const byFirst = isUniform(filled.map(key => key[4])) ? (a, b) => (a < b ? -1 : a > b ? 1 : 0) : () => 0;
      filled.sort((a, b) => sign * (byFirst(a[4], b[4]) || collator.compare(a[3], b[3])) || a[1] - b[1]);
    }
    return [...filled, ...keyed.filter(isEmpty)].map(key => key[0]);
  };

  // Heads that sort, and a field that filters: what they ask for stands in the address.
  const sortBy = (heads, keys, id, by) => heads.forEach((head, place) => {
    const key = keys[place];
    if (key === "") {
      return;
    }
    const button = make("button", { type: "button" }, ...head.childNodes);
    button.addEventListener("click", () => ask(`${id}.by`, by() === key ? `-${key}` : by() === `-${key}` ? "" : key));
    head.append(button);
  });
  const tellOrder = (heads, name, column, isDown) => {
    heads.forEach((head, place) => {
      if (place === column) {
        head.setAttribute("aria-sort", isDown ? "descending" : "ascending");
      } else {
        head.removeAttribute("aria-sort");
      }
    });
    said.textContent = `${name}: ${column < 0 ? "in the order of the records" : `by ${heads[column].textContent}, ${isDown ? "descending" : "ascending"}`}`;
  };
  const filterBy = (table, id, name) => {
    const field = make("input", { type: "search", "aria-label": `Filter ${name}`, autocomplete: "off", spellcheck: "false" });
    const told = make("output");
    field.addEventListener("input", () => ask(`${id}.only`, field.value));
    table.before(make("div", { "data-tools": "" }, make("label", {}, "Filter ", field), told));
    return { field, told };
  };
  const columnOf = (keys, by) => keys.indexOf(by.startsWith("-") ? by.slice(1) : by);

  // A body is a group: its heading stays first, what counts the rest stays last, and only what lies between is moved.
  const groupsOf = (table, width) => [...table.tBodies].map(body => {
    const all = [...body.rows];
    const rows = all.filter(row => row.cells.length === width);
    return { body, rows, head: all.find(row => row.cells[0]?.scope === "rowgroup"), rest: all.filter(row => row.cells.length !== width && row.cells[0]?.scope !== "rowgroup") };
  });

  const equip = (table, id) => {
    const heads = [...table.tHead.rows[0].cells];
    const groups = groupsOf(table, heads.length);
    const name = table.getAttribute("aria-label") ?? "table";
    const keys = heads.map(head => slug(head.textContent));
    const total = groups.reduce((sum, group) => sum + group.rows.length, 0);
    if (total < leastToSort) {
      return;
    }

    let by = "";
    let wanted = "";
    const order = now => {
      by = now;
      const isDown = by.startsWith("-");
      const column = columnOf(keys, by);
      for (const { body, rows, head, rest } of groups) {
        const all = column < 0 ? rows : sorted(rows, row => keyOfCell(row.cells[column]), isDown);
        // Rows taken one by one out of a table that is shown cost a browser seconds; taken away whole it costs little.
        const after = body.nextSibling;
        body.remove();
        for (const row of [...head ? [head] : [], ...all, ...rest]) {
          body.append(row);
        }
        table.insertBefore(body, after);
      }
      tellOrder(heads, name, column, isDown);
    };

    sortBy(heads, keys, id, () => by);
    table.dataset.sorts = "";

    let field = null;
    let told = null;
    let texts = null;
    const filter = now => {
      wanted = now;
      const words = wordsOf(now);
      texts ??= groups.map(group => {
        const above = group.head ? `${group.head.textContent} ` : "";
        return group.rows.map(row => (above + row.textContent).toLowerCase());
      });
      let shown = 0;
      groups.forEach((group, place) => {
        let here = 0;
        group.rows.forEach((row, line) => {
          row.hidden = !words.every(word => texts[place][line].includes(word));
          here += row.hidden ? 0 : 1;
        });
        if (group.head) {
          group.head.hidden = here === 0;
        }
        shown += here;
      });
      told.textContent = words.length === 0 ? "" : `${shown} of ${count(total, "row", "rows")}`;
      if (field.value !== now) {
        field.value = now;
      }
    };

    if (total >= leastToFilter && table.classList.contains("ledger")) {
      ({ field, told } = filterBy(table, id, name));
    }

    tools.push(all => {
      const nowBy = all.get(`${id}.by`) ?? "";
      const nowOnly = all.get(`${id}.only`) ?? "";
      if (nowBy !== by) {
        order(nowBy);
      }
      if (field && nowOnly !== wanted) {
        filter(nowOnly);
      }
    });
  };

  // A table of several pages: all its rows lie in a file beside them, as the HTML that the pages have. Of what was asked for only a screenful or
  // two is laid out; more is a button away.
  const equipLong = (table, id) => {
    const heads = [...table.tHead.rows[0].cells];
    const keys = heads.map(head => slug(head.textContent));
    const name = table.getAttribute("aria-label");
    const body = table.tBodies[0];
    const page = [...body.childNodes];
    const others = document.querySelectorAll("nav.pages");
    const entities = { "&amp;": "&", "&lt;": "<", "&gt;": ">", "&quot;": "\"", "&#39;": "'" };
    const textOf = html => html.replace(/<[^>]*>/gu, "").replace(/&(?:amp|lt|gt|quot|#39);/gu, entity => entities[entity]);
    const cellFrom = (html, from) => {
      let at = html.indexOf("<t", from);
      while (at >= 0 && !("hd".includes(html[at + 2]) && " >".includes(html[at + 3]))) {
        at = html.indexOf("<t", at + 2);
      }
      return at < 0 ? html.length : at;
    };
    // Of a row only the cell is looked at that it is sorted by.
    const cellOf = (html, column) => {
      let start = cellFrom(html, 0);
      for (let before = 0; before < column; before++) {
        start = cellFrom(html, start + 2);
      }
      return html.slice(start, cellFrom(html, start + 2));
    };
    const keyOfCellText = cell => keyOf(/^<t[hd][^>]* data-order=([-.\d]+)/u.exec(cell)?.[1], textOf(cell));
    const keyOfRow = column => row => row.keys[column] ??= keyOfCellText(cellOf(row.html, column));
    let rows = null;
    let by = "";
    let wanted = "";
    let shown = mostRows;
    let isShowing = false;
    const { field, told } = filterBy(table, id, name);
    const more = make("button", { type: "button" });
    const tail = make("p", { "data-tools": "", hidden: "" }, more);
    table.after(tail);

    let ordered = null;
    const show = () => {
      const isWhole = by === "" && wanted === "";
      others.forEach(nav => nav.hidden = !isWhole);
      if (isWhole) {
        if (isShowing) {
          body.replaceChildren(...page);
        }
        isShowing = false;
        tail.hidden = true;
        told.textContent = "";
        tellOrder(heads, name, -1, false);
        return;
      }
      isShowing = true;
      const column = columnOf(keys, by);
      const isDown = by.startsWith("-");
      if (ordered?.by !== by) {
        ordered = { by, rows: column < 0 ? rows : sorted(rows, keyOfRow(column), isDown) };
        tellOrder(heads, name, column, isDown);
      }
      const words = wordsOf(wanted);
      const hits = words.length === 0 ? ordered.rows : ordered.rows.filter(row => {
        row.text ??= textOf(row.html).toLowerCase();
        return words.every(word => row.text.includes(word));
      });
      const holder = document.createElement("template");
      holder.innerHTML = hits.slice(0, shown).map(row => row.html).join("");
      body.replaceChildren(holder.content);
      told.textContent = `${words.length === 0 ? count(rows.length, "row", "rows") : `${hits.length} of ${count(rows.length, "row", "rows")}`}${hits.length > shown ? `, the first ${shown} of them:` : ""}`;
      tail.hidden = hits.length <= shown;
      more.textContent = `Show ${Math.min(mostRows, hits.length - shown)} more`;
    };
    more.addEventListener("click", () => {
      const last = body.rows.length;
      shown += mostRows;
      show();
      // The focus stays where reading goes on, also for those who do not see the button go.
      body.rows[last]?.querySelector("a")?.focus();
    });
    sortBy(heads, keys, id, () => by);
    table.dataset.sorts = "";

    tools.push(all => {
      const nowBy = all.get(`${id}.by`) ?? "";
      const nowOnly = all.get(`${id}.only`) ?? "";
      if (field.value !== nowOnly) {
        field.value = nowOnly;
      }
      if (nowBy === by && nowOnly === wanted) {
        return;
      }
      by = nowBy;
      wanted = nowOnly;
      shown = mostRows;
      if (rows) {
        show();
        return;
      }
      const file = make("script", { src: new URL(table.dataset.rows, location.href).href });
      file.addEventListener("load", () => {
        rows ??= globalThis.ohmsteadRows.map(html => ({ html, keys: [] }));
        show();
      });
      document.head.append(file);
    });
  };

  // What searches is a file of its own, fetched as a script when somebody searches: pages from disk may load nothing else.
  let searching = null;
  const whenSearching = () => searching ??= new Promise((resolve, reject) => {
    const file = make("script", { src: new URL("search.js", root).href });
    file.addEventListener("load", () => resolve(globalThis.ohmsteadSearch));
    file.addEventListener("error", () => {
      searching = null;
      reject(new Error("search.js is missing"));
    });
    document.head.append(file);
  });

  const equipSearch = trail => {
    const field = make("input", { type: "search", "aria-label": "Search boards, parts, quantities, symptoms, days, people", autocomplete: "off", spellcheck: "false", enterkeyhint: "go" });
    const told = make("output");
    const list = make("div", { "data-found": "" });
    const links = () => [...list.querySelectorAll("a, button")];
    // What was asked for and by which key: the answer to Enter may come later than the key.
    let asking = "";
    let isOpening = false;

    const show = async text => {
      asking = text;
      if (field.value !== text) {
        field.value = text;
      }
      if (text.trim() === "") {
        told.textContent = "";
        list.replaceChildren();
        list.dataset.found = "";
        return;
      }
      let answer = null;
      try {
        answer = await (await whenSearching()).answer(text);
      } catch {
        told.textContent = "the index beside these pages cannot be read";
        return;
      }
      // Somebody may have typed on meanwhile.
      if (asking !== text) {
        return;
      }
      told.textContent = answer.told;
      list.replaceChildren(...answer.groups);
      list.dataset.found = text;
      if (isOpening) {
        isOpening = false;
        links()[0]?.click();
      }
    };

    const walk = (event, step) => {
      const all = links();
      const next = all.indexOf(document.activeElement) + step;
      event.preventDefault();
      (next < 0 ? field : all[Math.min(next, all.length - 1)])?.focus();
    };
    // Who comes to the field is about to search.
    field.addEventListener("focus", () => whenSearching().catch(() => {}));
    field.addEventListener("input", () => {
      isOpening = false;
      ask("find", field.value);
    });
    field.addEventListener("keydown", event => {
      if (event.key === "Escape" && field.value) {
        event.preventDefault();
        ask("find", "");
      } else if (event.key === "ArrowDown") {
        walk(event, 1);
      } else if (event.key === "Enter" && field.value.trim()) {
        event.preventDefault();
        isOpening = true;
        show(field.value);
      }
    });
    list.addEventListener("keydown", event => {
      if (event.key === "ArrowDown" || event.key === "ArrowUp") {
        walk(event, event.key === "ArrowDown" ? 1 : -1);
      } else if (event.key === "Escape") {
        event.preventDefault();
        field.focus();
      }
    });
    addEventListener("keydown", event => {
      if (event.key === "/" && hasKeys() && !isWriting(event)) {
        event.preventDefault();
        field.focus();
        field.select();
      }
    });
    trail.after(make("div", { role: "search", "data-tools": "" }, make("label", {}, "Search ", field), told, list, said));
    let find = "";
    tools.push(all => {
      const now = all.get("find") ?? "";
      if (now !== find) {
        find = now;
        show(now);
      }
    });
  };

  // What is remembered lies in the browser alone. Where it may keep nothing, the choice lasts as long as the page.
  const remembered = name => {
    try {
      return localStorage.getItem(`ohmstead.${name}`);
    } catch {
      return null;
    }
  };
  const remember = (name, value) => {
    try {
      localStorage.setItem(`ohmstead.${name}`, value);
    } catch {
      // Nothing is lost but the memory.
    }
  };

  const equipColours = trail => {
    const isDark = () => (document.documentElement.dataset.colours ?? (matchMedia("(prefers-color-scheme: dark)").matches ? "dark" : "light")) === "dark";
    const button = make("button", { type: "button" });
    const choose = colours => {
      if (colours === "dark" || colours === "light") {
        document.documentElement.dataset.colours = colours;
      }
      button.textContent = isDark() ? "Light" : "Dark";
    };
    button.addEventListener("click", () => {
      const colours = isDark() ? "light" : "dark";
      remember("colours", colours);
      choose(colours);
    });
    matchMedia("(prefers-color-scheme: dark)").addEventListener("change", () => choose(null));
    choose(remembered("colours"));
    trail.append(" ", button);
  };

  // Keys of one character can be switched off: who speaks to the computer types them by accident.
  const hasKeys = () => remembered("keys") !== "off";
  const isWriting = event => event.ctrlKey || event.altKey || event.metaKey || document.activeElement?.matches("input:not([type=checkbox]), textarea, select, [contenteditable]");
  const equipKeys = trail => {
    const keys = [
      ["/", "search"],
      ["\u2191 \u2193", "walk through what was found"],
      ["Enter", "open the first of it"],
      ["Esc", "leave the search, close this"],
      ["j k", "next and previous section"],
      ["?", "this list"],
    ];
    const box = make("input", { type: "checkbox" });
    const close = make("button", { type: "button" }, "Close");
    const panel = make(
      "dialog",
      { "aria-labelledby": "keys-heading" },
      make("h2", { id: "keys-heading" }, "Keys"),
      make("dl", {}, ...keys.map(([key, does]) => make("div", {}, make("dt", {}, key), make("dd", {}, does)))),
      make("p", {}, make("label", {}, box, " use / ? j k as keys")),
      close,
    );
    box.checked = hasKeys();
    box.addEventListener("change", () => remember("keys", box.checked ? "on" : "off"));
    close.addEventListener("click", () => panel.close());
    const button = make("button", { type: "button" }, "Keys");
    button.addEventListener("click", () => panel.showModal());
    trail.append(" ", button);
    document.body.append(panel);
    const step = by => {
      const all = [...document.querySelectorAll("main h2[id]")];
      const next = by > 0 ? all.find(one => one.getBoundingClientRect().top > 40) : all.findLast(one => one.getBoundingClientRect().top < -5);
      next?.scrollIntoView();
    };
    addEventListener("keydown", event => {
      if (isWriting(event) || !box.checked || panel.open) {
        return;
      }
      if (event.key === "?") {
        event.preventDefault();
        panel.showModal();
      } else if (event.key === "j" || event.key === "k") {
        step(event.key === "j" ? 1 : -1);
      }
    });
  };

  // Two photographs of one place, the later one laid over the earlier as far as a slider says; without it they stand side by side.
  const equipPair = pair => {
    const copies = [...pair.querySelectorAll("img")].map(image => {
      const copy = image.cloneNode();
      copy.alt = "";
      return copy;
    });
    if (copies.length !== 2) {
      return;
    }
    const slider = make("input", { type: "range", min: "0", max: "100", value: "50", "aria-label": "Where the earlier photograph ends and the later one begins, in percent" });
    const lay = () => { copies[1].style.clipPath = `inset(0 0 0 ${slider.value}%)`; };
    slider.addEventListener("input", lay);
    lay();
    pair.after(make("details", { "data-over": "" }, make("summary", {}, "One over the other"), make("p", {}, "earlier ", slider, " later"), make("div", {}, ...copies)));
  };

  // A link to a reading opens the fold it is, and those it lies in.
  // Asked of the address: while a page is still being loaded, nothing is the target yet.
  const aimedAt = () => {
    const name = location.hash.slice(1);
    try {
      return document.getElementById(name) ?? document.getElementById(decodeURIComponent(name));
    } catch {
      return null;
    }
  };
  const open = place => {
    for (let fold = place?.closest("details"); fold; fold = fold.parentElement.closest("details")) {
      fold.open = true;
    }
  };

  const apply = () => {
    if (isAnchor()) {
      open(aimedAt());
      // A row that a link leads to is shown, whatever the filter says.
      const row = document.querySelector(":target")?.closest("tr");
      if (row?.hidden) {
        row.hidden = false;
        row.scrollIntoView();
      }
      return;
    }
    const all = asked();
    tools.forEach(tool => tool(all));
  };

  const used = new Set();
  for (const table of document.querySelectorAll("main table")) {
    if (!table.tHead || table.querySelector("[rowspan]")) {
      continue;
    }
    const name = slug(table.getAttribute("aria-label") ?? "table");
    let id = name;
    for (let again = 2; used.has(id); again++) {
      id = `${name}-${again}`;
    }
    used.add(id);
    (table.dataset.rows ? equipLong : equip)(table, id);
  }
  const trail = document.querySelector("body > nav");
  if (trail) {
    equipSearch(trail);
    equipColours(trail);
    equipKeys(trail);
  }
  document.querySelectorAll(".pair").forEach(equipPair);
  addEventListener("hashchange", apply);
  apply();
  said.textContent = "";
})();
