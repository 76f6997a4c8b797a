// Package goeson finds the titles that say that a table of a page before goes on, "ECU TERMINALS (continued)".
package goeson

import (
	"slices"
	"strings"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/value"
)

// A manual breaks a table at the foot of a page and says so in the title above the rest. It is the same connector.
//
//	HOIST PLUG
//	Pin | Use
//	1   | Up
//	page 8
//	HOIST PLUG (continued)
//	Pin | Use
//	2   | Down

// Rows are the rows of a sheet, each title that goes on with one above written as that one. A title stays as it is where no other
// begins so, or where two do. It stays as well where a row below it begins as one below the first does and says something else: then
// one cavity would be wired twice.
func Rows(t *table.Table) []table.Row {
	rows := t.Rows
	for i := range rows {
		of := namedIn(rows[i])
		if of == "" {
			continue
		}
		at, ok := begins(rows[:i], of)
		if !ok || clash(rows[at+1:i], rows[i+1:]) {
			continue
		}
		_, whole := rows[at].Filled()
		if &rows[0] == &t.Rows[0] {
			rows = slices.Clone(rows)
		}
		rows[i].Cells = slices.Clone(rows[i].Cells)
		for k, c := range rows[i].Cells {
			if c != "" {
				rows[i].Cells[k] = whole
			}
		}
	}
	return rows
}

// namedIn is the title that a row of one text goes on with; "" for any other row.
func namedIn(r table.Row) string {
	const longest = 80 // bytes (no source)
	n, text := r.Filled()
	if n != 1 || len(text) > longest {
		return ""
	}
	text = strings.TrimRight(text, " :")
	before, said := text, ""
	if open := strings.LastIndexAny(text, "(["); open > 0 && strings.HasSuffix(strings.TrimRight(text, "."), closing(text[open])) {
		before, said = text[:open], strings.Trim(text[open:], "()[].")
		said, _, _ = strings.Cut(said+" ", " ") // "continued from page 3"
	} else if blank := strings.LastIndexByte(text, ' '); blank > 0 {
		before, said = text[:blank], text[blank+1:]
	}
	before = strings.TrimRight(before, " ,;:-–—….")
	if !isGoesOn(strings.Trim(table.Fold(said), ".…")) || len(name.Words(before)) == 0 {
		return ""
	}
	return before
}

// closing is the bracket that ends what the other begins.
func closing(open byte) string {
	if open == '(' {
		return ")"
	}
	return "]"
}

// isGoesOn reports whether a folded word says that something goes on. From memory, no source.
func isGoesOn(w string) bool {
	switch w {
	case "continued", "cont", "contd", "cont'd", "cont’d", "con't", "ctd", "fortsetzung", "forts", "fts", "fortgesetzt",
		"suite", "continuacion", "continua", "segue", "seguito", "vervolg", "fortsattning", "fortsaettning", "fortsat",
		"fortsaettelse", "fortsættelse", "fortsetter", "continuacao", "continuação", "pokracovani", "folytatas", "jatkuu",
		"jatkoa", "продолжение":
		return true
	}
	return false
}

// begins finds the title that begins with a text, before a bracket or another sign, the last of several alike; ok is false where there
// is none, or two that are not alike.
func begins(rows []table.Row, of string) (at int, ok bool) {
	of, found := table.Fold(of), ""
	for i, r := range rows {
		n, text := r.Filled()
		if n != 1 {
			continue
		}
		f := table.Fold(text)
		rest, is := strings.CutPrefix(f, of)
		rest = strings.TrimLeft(rest, " ")
		if !is || rest != "" && !strings.ContainsAny(rest[:1], "([,;:-") && !strings.HasPrefix(rest, "–") {
			continue
		}
		if found != "" && found != f {
			return 0, false
		}
		if found == "" {
			at, found = i, f
		}
	}
	return at, found != ""
}

// clash reports whether a row of the second table begins as one of the first does, and is another. Each ends at its next title.
func clash(first, second []table.Row) bool {
	told := map[string][]string{}
	for _, r := range body(first) {
		told[begin(r)] = r.Cells
	}
	return slices.ContainsFunc(body(second), func(r table.Row) bool {
		cells, is := told[begin(r)]
		return is && isShort(begin(r)) && !slices.Equal(cells, r.Cells)
	})
}

// body are the rows of several cells below a title, as far as the next text.
func body(rows []table.Row) (of []table.Row) {
	for _, r := range rows {
		if n, _ := r.Filled(); n > 1 {
			of = append(of, r)
		} else if len(of) > 0 {
			break
		}
	}
	return of
}

// begin is what a row begins with, folded.
func begin(r table.Row) string {
	_, text := r.Filled()
	return table.Fold(text)
}

// isShort reports whether a text can be what a cavity is called: it has a number or a few letters. Headings and page feet come again.
func isShort(text string) bool {
	const most = 3 // bytes (no source)
	return len(text) <= most || value.HasDigit(text)
}
