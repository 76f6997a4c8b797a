package squaremm

import (
	"slices"
	"strings"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/value"
)

// Taken is a column whose millimetres are taken for square ones.
type Taken struct {
	Head string
	Rows []table.Row // those of its sizes
}

// column is what stands below one heading.
type column struct {
	at, row    int // of its heading
	named      bool
	usual, odd []int // the rows of its sizes: of usual sections, and of other numbers
	parts      bool  // some size is a part of a millimetre
}

// Rows writes mm² for the mm of the columns of sizes of a sheet, and says which columns those are. A column of one size is taken where
// another column of the sheet is.
//
//	Pin | Colour | Size
//	1   | red    | 0.75mm
//	2   | black  | 1.0mm
func Rows(h shape.Headings, t *table.Table) (rows []table.Row, taken []Taken) {
	if bare := wiresInMM(h, t.Rows); bare.rows != nil {
		return bare.rows, []Taken{bare.of}
	}
	if !slices.ContainsFunc(t.Rows, hasSection) {
		return t.Rows, nil // most lists
	}
	var all []column
	sure := false
	for _, c := range columns(h, t.Rows) {
		n := len(c.usual) + len(c.odd)
		if len(c.usual) == 0 || 8*len(c.odd) > n || c.named && !c.parts {
			continue
		}
		all = append(all, c)
		sure = sure || n > 1
	}
	rows = slices.Clone(t.Rows)
	if told := texts(h, rows); told.Rows != nil {
		taken = append(taken, told)
	}
	if !sure {
		return rows, taken
	}
	for _, c := range all {
		of := Taken{Head: t.Rows[c.row].Cells[c.at]}
		for _, i := range c.usual {
			cells := slices.Clone(rows[i].Cells)
			end := cut(cells[c.at])
			cells[c.at] = cells[c.at][:end] + "²" + cells[c.at][end:]
			rows[i].Cells = cells
			of.Rows = append(of.Rows, rows[i])
		}
		taken = append(taken, of)
	}
	return rows, taken
}

// hasSection reports whether a cell of a row has a usual section with mm behind it.
func hasSection(r table.Row) bool {
	var room [4]int
	return slices.ContainsFunc(r.Cells, func(c string) bool {
		return slices.ContainsFunc(ends(c, room[:0]), func(end int) bool { return usual[sectionOf(c[:end])] })
	})
}

// columns are the columns of some rows that are headed as sizes, or as wires whose cells have a colour beside the size.
func columns(h shape.Headings, rows []table.Row) (all []column) {
	var open []column
	for i, r := range rows {
		if len(r.Cells) > 1 && h.IsHead(r) {
			all, open = append(all, open...), nil
			cols, _ := h.Columns([]table.Row{r}, len(r.Cells))
			for k, c := range cols {
				if k < len(r.Cells) && !c.Given && !ofRound(r.Cells[k]) && (c.Field == name.FieldGauge ||
					c.Field == name.FieldWire || c.Field == name.FieldCable) {
					open = append(open, column{at: k, row: i, named: c.Field != name.FieldGauge})
				}
			}
			continue
		}
		for k := range open {
			c := &open[k]
			if c.at >= len(r.Cells) || shape.IsText(r) {
				continue
			}
			cell := r.Cells[c.at]
			end := cut(cell)
			if end < 0 || ofRound(cell) || c.named && !isColour(cell, end) {
				continue
			}
			number := sectionOf(cell[:end])
			if !usual[number] {
				c.odd = append(c.odd, i)
				continue
			}
			c.usual = append(c.usual, i)
			c.parts = c.parts || strings.Contains(number, ".")
		}
	}
	return append(all, open...)
}

// isColour reports whether what stands round a size is a colour.
func isColour(cell string, end int) bool {
	rest := strings.TrimSpace(strings.TrimRight(strings.TrimRight(cell[:end], "mM "), "0123456789.,") + " " + cell[end:])
	c, ok := value.ParseColour(strings.Trim(rest, ",;/ "), "")
	return ok && len(c) > 0
}

// cut is where the only mm behind a number ends in a text; −1 where there is none, or several, or it is a square one already.
func cut(text string) int {
	if all := ends(text, nil); len(all) == 1 {
		return all[0]
	}
	return -1
}

// ends adds to some places those where each mm behind a number ends in a text, square ones left out.
func ends(text string, all []int) []int {
	for i := 1; i+1 < len(text); i++ {
		if text[i]|' ' != 'm' || text[i+1]|' ' != 'm' || i+2 < len(text) && isLetter(text[i+2]) {
			continue
		}
		number := strings.TrimRight(text[:i], " ")
		if number == "" || !isDigit(number[len(number)-1]) {
			continue
		}
		rest := strings.TrimLeft(text[i+2:], " ")
		if strings.HasPrefix(rest, "²") || strings.HasPrefix(rest, "^") || i+2 < len(text) && (text[i+2] == '2' || text[i+2] == '3') ||
			isSquare(rest) {
			continue
		}
		all = append(all, i+2)
	}
	return all
}

// isSquare reports whether a text begins with a word that makes a millimetre a square one, "sq", "carré".
func isSquare(rest string) bool {
	word, _, _ := strings.Cut(table.Fold(rest), " ")
	switch strings.Trim(word, ".,;)") {
	case "sq", "square", "squared", "q", "carre", "carres", "au", "al", "cuadrado", "cuadrados", "quadri", "quadrato", "quadrati",
		"quadrado",
		"quadrados", "quadrat", "kwadraat", "kvadrat", "kwadrat", "kw":
		return true
	}
	return false
}

// sectionOf is the number that a text ends with before its mm, with a point and no needless nought: "1" of "2 x 1,0 mm".
func sectionOf(text string) string {
	text = strings.TrimRight(text, "mM ")
	number := text[len(strings.TrimRight(text, "0123456789.,")):]
	if whole, part, ok := strings.Cut(strings.Replace(number, ",", ".", 1), "."); ok {
		if number = whole; strings.Trim(part, "0") != "" {
			number += "." + strings.TrimRight(part, "0")
		}
	}
	if strings.HasPrefix(number, ".") {
		number = "0" + number
	}
	return number
}

// ofRound reports whether a text has a word for a diameter, a length or what lies round a wire.
func ofRound(text string) bool {
	if strings.ContainsAny(text, "øØ⌀∅") {
		return true
	}
	return slices.ContainsFunc(name.Words(table.Fold(text)), func(w string) bool {
		switch w {
		case "od", "id", "dia", "diam", "diameter", "diameters", "durchmesser", "aussendurchmesser", "diametre", "diametro", "srednica",
			"prumer", "halkaisija", "atmero", "diametru", "outer", "outside", "overall", "thick", "thickness", "insulation", "isolation",
			"sleeve", "sleeving", "tube", "tubing", "conduit", "length", "long", "lange", "longueur", "largo", "lunghezza", "lengte",
			"langd",
			"strip", "crimp", "contact", "terminal", "lug", "stud", "hole", "seal", "pitch":
			return true
		}
		return false
	})
}

func isDigit(c byte) bool  { return c >= '0' && c <= '9' }
func isLetter(c byte) bool { return c|' ' >= 'a' && c|' ' <= 'z' }

// usual are the sections that wire is made in, in mm²: metric and Japanese rows, and what British looms have. From memory, no source.
var usual = func() map[string]bool {
	all := map[string]bool{}
	for _, s := range strings.Fields("0.08 0.13 0.14 0.2 0.22 0.25 0.3 0.34 0.35 0.5 0.65 0.75 0.85 1 1.25 1.5 2 2.5 3 4 4.5 5 6 7 8 8.5 " +
		"10 15 16 20 25 30 35 40 50 60 70 95 120") {
		all[s] = true
	}
	return all
}()
