package table

import (
	"bytes"
	"fmt"
	"path"
	"strconv"
	"strings"
	"time"
)

// xlsx reads the sheets of an Office Open XML workbook (ECMA-376 part 1, SpreadsheetML).
// A formula gives the value that was stored with it; macros and links are not opened.
func (b *book) xlsx() ([]Table, error) {
	main := "xl/workbook.xml"
	root, err := b.relations("_rels/.rels", "")
	if err != nil {
		return nil, err
	}
	for _, r := range root {
		if strings.HasSuffix(r.kind, "/officeDocument") {
			main = r.target
		}
	}
	type sheet struct {
		name, id string
		hidden   bool
	}
	var sheets []sheet
	dates1904 := false
	err = b.walk(main, visitor{start: func(e element) error {
		switch e.name {
		case "sheet":
			sheets = append(sheets, sheet{marked(e.attr("name")), e.attr("id"), e.attr("state") == "hidden" ||
				e.attr("state") == "veryHidden"})
		case "workbookPr":
			dates1904 = e.attr("date1904") == "1" || e.attr("date1904") == "true"
		}
		if len(sheets) > b.l.Sheets {
			return b.refuse("", fmt.Sprintf("has more than %d sheets", b.l.Sheets), "fewer")
		}
		return nil
	}})
	if err != nil {
		return nil, err
	}
	dir, file := path.Split(main)
	rels, err := b.relations(dir+"_rels/"+file+".rels", dir)
	if err != nil {
		return nil, err
	}
	x := xlsxBook{book: b, dates1904: dates1904, texts: map[string]string{}}
	for _, r := range rels {
		switch {
		case strings.HasSuffix(r.kind, "/sharedStrings"):
			err = x.readStrings(r.target)
		case strings.HasSuffix(r.kind, "/styles"):
			err = x.readStyles(r.target)
		}
		if err != nil {
			return nil, err
		}
	}
	var all []Table
	for _, s := range sheets {
		r, ok := rels[s.id]
		if !ok || !strings.HasSuffix(r.kind, "/worksheet") {
			continue // a chart
		}
		t := Table{File: b.name, Sheet: s.name, Hidden: s.hidden, Comma: true}
		if err := x.sheet(r.target, &t); err != nil {
			return nil, err
		}
		all = append(all, t)
	}
	return all, nil
}

// relation is one line of a .rels part.
type relation struct{ kind, target string }

// relations reads a .rels part. A target is a name inside the zip, looked up and never
// a path of the machine; one outside the workbook is left out.
func (b *book) relations(part, dir string) (map[string]relation, error) {
	all := map[string]relation{}
	if b.parts[part] == nil {
		return all, nil
	}
	err := b.walk(part, visitor{start: func(e element) error {
		if e.name != "Relationship" || e.attr("TargetMode") == "External" {
			return nil
		}
		target := e.attr("Target")
		if strings.HasPrefix(target, "/") {
			target = strings.TrimPrefix(path.Clean(target), "/")
		} else {
			target = path.Join(dir, target)
		}
		all[e.attr("Id")] = relation{e.attr("Type"), target}
		return nil
	}})
	return all, err
}

type xlsxBook struct {
	*book
	strings   []string          // tidy
	texts     map[string]string // of cells that have their own, tidy
	dates     []bool            // by style: the number is a date
	struck    []bool            // by style: the text is struck out
	dates1904 bool
}

// sheet reads the rows of one sheet.
func (x *xlsxBook) sheet(part string, t *Table) error {
	var spans []merged
	text, err := x.whole(part)
	if err != nil {
		return err
	}
	switch {
	case text == nil:
		err = x.walk(part, x.rows(t, &spans))
	case !x.halves(part, text, t, &spans):
		err = x.walkText(part, bytes.NewReader(text), x.rows(t, &spans))
	}
	x.fill(t, spans)
	return err
}

// rows takes in the rows of a sheet, and which of its cells are one.
func (x *xlsxBook) rows(t *Table, spans *[]merged) visitor {
	var cells []string
	var value, formula, inline []byte
	var kind, style string
	line, col := 0, 0
	how, filled := look{}, 0
	into := (*[]byte)(nil)
	return visitor{
		start: func(e element) error {
			switch e.name {
			case "row":
				if line = e.number("r", line+1); line < 1 {
					return x.refuse(t.Sheet, "a row has no number", "what a spreadsheet program writes")
				}
				cells, col = make([]string, 0, len(cells)), 0
				how, filled = look{struck: true, hidden: e.yes("hidden")}, 0
			case "mergeCell":
				if m, ok := mergedOf(e.attr("ref")); ok && len(*spans) < mostMerged {
					*spans = append(*spans, m)
				}
			case "c":
				if ref := e.attr("r"); ref != "" {
					if col = columnOf(ref); col < 0 {
						return x.refuse(t.Sheet, fmt.Sprintf("a cell stands at %q", Short(ref)), "A1, B1 …")
					}
				}
				if col >= x.l.Columns {
					return &Error{Place{x.name, t.Sheet, line, ColumnLetter(col)}, "is a column too far",
						fmt.Sprintf("up to %d columns", x.l.Columns)}
				}
				kind, style = e.attr("t"), e.attr("s")
				value, formula, inline = value[:0], formula[:0], inline[:0]
			case "v":
				into = &value
			case "f":
				into = &formula
			case "t":
				into = &inline
			}
			return nil
		},
		end: func(name string) error {
			switch name {
			case "v", "f", "t":
				into = nil
			case "c":
				s := x.cell(kind, style, value, inline)
				if s == "" && len(formula) > 0 {
					s = marked("=" + string(formula)) // never worked out: it stays what it is
				}
				if s != "" {
					for len(cells) < col {
						cells = append(cells, "")
					}
					cells = append(cells[:col], s)
					filled++
					how.struck = how.struck && x.isStruck(style)
				}
				col++
			case "row":
				how.struck = how.struck && filled > 0
				return x.row(t, line, cells, how)
			}
			return nil
		},
		text: func(s []byte) {
			if into != nil {
				*into = append(*into, s...)
			}
		},
	}
}

func (x *xlsxBook) isDate(style string) bool {
	k, err := strconv.Atoi(style)
	return err == nil && k >= 0 && k < len(x.dates) && x.dates[k]
}

func (x *xlsxBook) isStruck(style string) bool {
	k, err := strconv.Atoi(style)
	return err == nil && k >= 0 && k < len(x.struck) && x.struck[k]
}

// mergedOf reads "B3:B7"; ok is false for one row, or for cells of several columns.
func mergedOf(ref string) (m merged, ok bool) {
	a, b, found := strings.Cut(ref, ":")
	row := func(s string) int {
		n, err := strconv.Atoi(strings.TrimLeft(s, "ABCDEFGHIJKLMNOPQRSTUVWXYZ"))
		if err != nil {
			return -1
		}
		return n
	}
	m = merged{columnOf(a), row(a), row(b)}
	return m, found && m.col >= 0 && columnOf(b) == m.col && m.first > 0 && m.last > m.first
}

// cell is the text of a stored value.
func (x *xlsxBook) cell(kind, style string, value, inline []byte) string {
	switch kind {
	case "s":
		if i, err := strconv.Atoi(string(bytes.TrimSpace(value))); err == nil && i >= 0 && i < len(x.strings) {
			return x.strings[i]
		}
		return x.once(value)
	case "inlineStr":
		return x.once(inline)
	case "str", "d", "e":
		return x.once(value)
	case "b":
		if string(bytes.TrimSpace(value)) == "1" {
			return "yes"
		}
		return "no"
	}
	value = bytes.TrimSpace(value)
	if len(value) < 4 && len(bytes.Trim(value, "0123456789")) == 0 && !bytes.HasPrefix(value, []byte{'0'}) && !x.isDate(style) {
		return x.once(value) // a cavity, a size: many have it
	}
	number := plainNumber(string(value))
	if x.isDate(style) {
		if v, err := strconv.ParseFloat(number, 64); err == nil && v >= 1 && v < 2_958_466 { // up to the year 9999
			day := time.Date(1899, 12, 30, 0, 0, 0, 0, time.UTC)
			if x.dates1904 {
				day = time.Date(1904, 1, 1, 0, 0, 0, 0, time.UTC)
			}
			return day.AddDate(0, 0, int(v)).Format("2006-01-02")
		}
	}
	return marked(number)
}

// once is the text of a cell, tidy; of short ones, which many cells have, one and the same.
func (x *xlsxBook) once(text []byte) string {
	const longest, most = 32, 4096 // bytes, texts
	if s, ok := x.texts[string(text)]; ok {
		return s
	}
	s := marked(string(text))
	if len(text) <= longest && len(x.texts) < most {
		x.texts[string(text)] = s
	}
	return s
}

// columnOf reads the letters of "AB12" as 27; −1 where there are none or too many.
func columnOf(ref string) int {
	n := 0
	for i := range len(ref) {
		c := ref[i]
		if isDigit(c) {
			if i == 0 {
				return -1
			}
			break
		}
		if c < 'A' || c > 'Z' || i > 2 {
			return -1
		}
		n = 26*n + int(c-'A') + 1
	}
	return n - 1
}
