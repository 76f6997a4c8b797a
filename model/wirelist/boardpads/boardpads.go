// Package boardpads reads tables of the pads of one board and of the modules that they are wired to, as builders write them in the text
// that goes with a project.
//
// Words. A pad is where a board takes a wire: it has a number, or the name of what it does. A module is what the wire goes to; its pad is
// the last word of the cell. A cell may name the pads of several modules.
//
//	Teensy  | Device           | Notes              Teensy pin | Goes to | Notes
//	0 (RX1) | GPS TX           | 9600 baud     ->   0 (RX1)    | GPS:TX  | 9600 baud
//	GND     | IMU GND, GPS GND |                    GND        | IMU:GND |
//	                                                GND        | GPS:GND |
//
// It writes such headings and cells as the others read them. All cells of both columns together say that a table is one: most of the near
// ones are pads, and the far ones end in several pads of buses and supplies.
package boardpads

import (
	"slices"
	"strings"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/pinword"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/value"
)

const (
	leastRows   = 3 // below the headings where that is no chance (no source)
	mostColumns = 8 // of such a table (no source)
)

// Rows are the rows of a sheet, those of such tables written so.
func Rows(h shape.Headings, t *table.Table) []table.Row {
	rows := t.Rows
	if h.HeadLine() > 0 || h.Numbered() || h.Recipe != nil {
		return rows // a person has said what the columns are
	}
	for i := 0; i+leastRows < len(rows); i++ {
		if !starts(t, rows, i) {
			continue // most rows
		}
		end := i + 1
		for end < len(rows) && isBelow(t, rows[end-1], rows[end]) {
			end++
		}
		if end-i <= leastRows {
			continue
		}
		made := devices(h, rows[i:end])
		if made == nil {
			made = modules(rows[i:end])
		}
		if made == nil {
			made = matrix(h, rows[i:end])
		}
		if made == nil {
			continue
		}
		rows = slices.Concat(rows[:i], made, rows[end:])
		i += len(made) - 1
	}
	return rows
}

// starts reports whether a row can be the headings of such a table: a few cells, with no row of a table right above.
func starts(t *table.Table, rows []table.Row, i int) bool {
	r := rows[i]
	if len(r.Cells) < 2 || len(r.Cells) > mostColumns || r.Prose || t.Marked && !r.First {
		return false
	}
	return i == 0 || t.Marked || len(rows[i-1].Cells) < 2 || rows[i-1].Line+1 < r.Line || shape.IsText(rows[i-1])
}

// devices is a table of the pads of a board and what they are wired to, written so; nil where it is none.
func devices(h shape.Headings, rows []table.Row) []table.Row {
	near, far := columnsOf(h, rows[0])
	if near < 0 {
		return nil
	}
	x := columns{near: near, far: far, rows: rows[1:], wide: len(rows[0].Cells)}
	sure := x.arePads()
	of := x.padsOf()
	if !sure && !x.areNamed() || !areModules(of, !sure) || !saysGoing(rows[0].Cells[far]) && !x.haveSupply(of) {
		return nil
	}
	x.signal = !slices.ContainsFunc(rows[0].Cells, func(c string) bool {
		return h.Words[strings.Join(name.Words(table.Fold(c)), " ")].Field == name.FieldSignal
	})
	return x.parted(headed(h, rows[0], near, far), of)
}

// isBelow reports whether a row is of the table of the one above it.
func isBelow(t *table.Table, above, r table.Row) bool {
	return !r.First && !r.Prose && len(r.Cells) > 1 && (t.Marked || r.Line <= above.Line+1)
}

// columnsOf are the columns of a row of headings that can be the pads of a board and what they are wired to; −1 where it has none, or
// another one says the pads of the modules.
func columnsOf(h shape.Headings, r table.Row) (near, far int) {
	near, far = -1, -1
	if !slices.ContainsFunc(r.Cells, headsFar) {
		return -1, -1
	}
	for i, c := range r.Cells {
		folded := strings.Join(name.Words(table.Fold(c)), " ")
		switch {
		case folded == "":
		case headsFar(c):
			if far >= 0 {
				return -1, -1
			}
			far = i
		case endsInPin(folded) || isPadHead(folded):
			if near >= 0 && endsInPin(table.Fold(r.Cells[near])) && endsInPin(folded) {
				return -1, -1
			}
			if near < 0 || endsInPin(folded) {
				near = i
			}
		case near < 0 && i == 0 && isBoard(h, c):
			near = i
		}
	}
	if near < 0 || far < 0 {
		return -1, -1
	}
	return near, far
}

// headsFar reports whether a heading is one for what a pad is wired to. Common words, from memory, no source.
func headsFar(head string) bool {
	folded := table.Fold(strings.TrimSpace(head))
	return slices.Contains([]string{"device", "devices", "component", "module", "sensor", "peripheral", "part", "connected to",
		"connects to", "connect to", "goes to", "wired to", "attached to", "to", "destination", "gerat", "modul", "bauteil", "geht an",
		"geht zu", "verbunden mit", "angeschlossen an", "appareil", "capteur", "composant", "relie a", "connecte a", "va a",
		"dispositivo", "sensore", "modulo", "componente", "conectado a", "collegato a"}, folded)
}

// saysGoing reports whether such a heading says that something goes there, and not only what it is.
func saysGoing(head string) bool { return strings.Contains(head, " ") || table.Fold(head) == "to" }

// haveSupply reports whether some pad is of a supply: a table of what a program does with the pads has none.
func (x columns) haveSupply(of map[string]map[string]bool) bool {
	for _, pads := range of {
		for p := range pads {
			if isSupply(p) {
				return true
			}
		}
	}
	return slices.ContainsFunc(x.rows, func(r table.Row) bool { return isSupply(table.Fold(cell(r, x.near))) })
}

// isPadHead reports whether a folded heading is a word for the pads of any board.
func isPadHead(folded string) bool {
	return slices.Contains([]string{"gpio", "io", "bcm", "pad", "pads", "pin", "pins", "pin no", "board pin"}, folded)
}

// endsInPin reports whether a folded heading names a board and ends with a word for its pads.
func endsInPin(folded string) bool {
	w := strings.Fields(folded)
	return len(w) > 1 && (pinword.Is(w[len(w)-1]) || w[len(w)-1] == "gpio" || w[len(w)-1] == "pad")
}

// isBoard reports whether a heading can be the name of a board: a word or three that no list has for anything else.
func isBoard(h shape.Headings, head string) bool {
	const most = 3 // words (no source)
	w := name.Words(table.Fold(head))
	return len(w) > 0 && len(w) <= most && h.Words[strings.Join(w, " ")].Field == "" && !name.IsOtherHead(strings.Join(w, " ")) &&
		!strings.ContainsAny(head, ":;=?,.")
}

// headed is the row of headings with a word for pads behind the name of a board, and one for where a wire goes.
func headed(h shape.Headings, r table.Row, near, far int) table.Row {
	r.Cells = slices.Clone(r.Cells)
	switch folded := table.Fold(r.Cells[near]); {
	case folded == "pad" || folded == "pads":
		r.Cells[near] = "Pin"
	case endsInPin(folded) || h.IsPinHeading(r.Cells[near]) && folded != "gpio":
	default:
		r.Cells[near] += " pin"
	}
	r.Cells[far] = "Goes to"
	return r
}

// columns are the two columns of a table.
type columns struct {
	near, far int
	rows      []table.Row
	wide      int  // the headings
	signal    bool // no column of the table says what the wires are
}

// cell is a cell of a row; "" where nothing stands there.
func cell(r table.Row, i int) string {
	if i >= len(r.Cells) || value.IsNothing(r.Cells[i]) {
		return ""
	}
	return strings.TrimSpace(r.Cells[i])
}

// arePads reports whether nearly all near cells are pads of a board, and some of them such as no plug has.
func (x columns) arePads() bool {
	of, all, sure := x.count(x.near)
	return sure > 1 && 4*sure >= of && 6*all >= 5*of
}

// areNamed reports whether the near cells are numbers of a header, and another column says which pads of a board they are.
//
//	Pi pin | BCM | Name | Goes to
//	1      |     | 3V3  | IMU VIN
//	3      | 2   | SDA1 | IMU SDA
func (x columns) areNamed() bool {
	of, all, _ := x.count(x.near)
	if all < of {
		return false
	}
	for i := range x.rows[0].Cells {
		if i == x.near || i == x.far {
			continue
		}
		if _, _, sure := x.count(i); sure > 2 && 2*sure >= of {
			return true
		}
	}
	return false
}

// count is how many cells of a column are filled, can be pads, and are such as only boards have.
func (x columns) count(i int) (of, all, sure int) {
	for _, r := range x.rows {
		c := cell(r, i)
		if c == "" {
			continue
		}
		of++
		if isBoardPad(c) {
			sure++
			all++
		} else if name.IsCavity(name.WithoutBrackets(c)) {
			all++
		}
	}
	return of, all, sure
}

// padsOf are the pads of each module that the far cells tell.
func (x columns) padsOf() map[string]map[string]bool {
	all := map[string]map[string]bool{}
	for _, r := range x.rows {
		for _, p := range pieces(cell(r, x.far)) {
			of, pad := padBehind(p)
			if of = table.Fold(of); pad == "" {
				continue
			}
			if all[of] == nil {
				all[of] = map[string]bool{}
			}
			all[of][table.Fold(pad)] = true
		}
	}
	return all
}

// areModules reports whether the far cells end in the pads of modules: in several of buses and supplies, those of one module where the
// near ones do not say that they are of a board.
func areModules(of map[string]map[string]bool, ofOne bool) bool {
	all := map[string]bool{}
	one := false
	for _, pads := range of {
		buses, supplies := 0, 0
		for p := range pads {
			switch {
			case isSupply(p):
				supplies++
			case isBusPad(p):
				buses++
			default:
				continue
			}
			all[p] = true
		}
		one = one || buses > 0 && buses+supplies > 1
	}
	return len(all) > 1 && (one || !ofOne)
}

// parted are the headings and the rows with a colon before the pads of the modules, one for each module. What a pad does and what is
// said of a module have columns of their own behind the others, where something stands there.
func (x columns) parted(head table.Row, of map[string]map[string]bool) []table.Row {
	head.Cells = append(head.Cells, "Signal", "Note")
	all := []table.Row{head}
	var told [2]bool
	for _, r := range x.rows {
		ends := partPads(cell(r, x.far), of)
		if ends == nil {
			ends = []end{{text: x.cellOf(r, x.far)}}
		}
		pad, does := doesInBrackets(cell(r, x.near))
		for _, e := range ends {
			one := r
			one.Cells = make([]string, x.wide+2, max(x.wide, len(r.Cells))+2)
			copy(one.Cells[:x.wide], r.Cells)
			one.Cells = append(one.Cells, r.Cells[min(x.wide, len(r.Cells)):]...)
			one.Cells[x.far] = e.text
			signal, note := does, e.remark
			if !x.signal {
				signal, note = "", strings.Trim(does+", "+note, ", ")
			}
			if does != "" {
				one.Cells[x.near] = pad
			}
			one.Cells[x.wide], one.Cells[x.wide+1] = signal, note
			told[0], told[1] = told[0] || signal != "", told[1] || note != ""
			all = append(all, one)
		}
	}
	for k := len(told) - 1; k >= 0; k-- {
		for i := range all {
			if !told[k] {
				all[i].Cells = slices.Delete(all[i].Cells, x.wide+k, x.wide+k+1)
			}
		}
	}
	return all
}

// cellOf is a cell of a row as it stands there.
func (x columns) cellOf(r table.Row, i int) string {
	if i >= len(r.Cells) {
		return ""
	}
	return r.Cells[i]
}
