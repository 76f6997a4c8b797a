package parthead

import (
	"slices"
	"strings"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/pinword"
	"contralay/model/wirelist/plugword"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/value"
	"contralay/model/wirelist/words"
)

// columns are the columns of a table and what their cells are.
type columns struct {
	head   []string
	rows   []table.Row
	pins   []kind
	signal int // −1 for none, as of the others
	colour int
	names  int  // what the far pins are called
	placed bool // a column is of ends, connectors or pins by its heading alone
	odd    bool // the heading of a column that is not empty is known for nothing, and does not end with a word for pins
}

// kind is what the cells of a column are.
type kind int

const (
	other   kind = iota
	numbers      // of pins, each once: "2", "2 (GND)"; several in a cell are empty ones
	called       // names of pins
)

// joined is the headings of a table, those of two rows joined, and how many rows they are; 0 where they are none.
func joined(h shape.Headings, rows []table.Row) (head []string, n int) {
	width := 0
	for _, r := range rows {
		width = max(width, len(r.Cells))
	}
	if width > mostColumns {
		return nil, 0
	}
	head = make([]string, width)
	copy(head, rows[0].Cells)
	if !AreWords(rows[1]) || !under(h, rows[0], rows[1], rows[2:]) {
		return head, 1
	}
	for k, c := range rows[1].Cells {
		switch above := head[k]; {
		case strings.HasSuffix(above, "-") && c != "" && strings.ToLower(c[:1]) == c[:1]:
			head[k] = strings.TrimSuffix(above, "-") + c // a word that is parted at the end of its line
		default:
			head[k] = strings.TrimSpace(above + " " + c)
		}
	}
	return head, 2
}

// under reports whether a second row of words says what of each part stands below it: one is a word for pins, in the first column or in
// another, and none comes again. Two rows that are headings of ends are of sidehead, and two known headings alone are a table of their own,
// where no row has a pin with its name in the first cell.
func under(h shape.Headings, over, r table.Row, below []table.Row) bool {
	says, seen := 0, map[string]bool{}
	for k, c := range r.Cells {
		if c == "" {
			continue
		}
		folded := table.Fold(c)
		if seen[folded] {
			return false
		}
		seen[folded] = true
		if k < len(over.Cells) && over.Cells[k] != "" && isOfPins(folded) {
			says++
		}
		filled, _ := over.Filled()
		if isColourHead(h, folded) && k < len(over.Cells) && over.Cells[k] != "" && filled < len(r.Cells) {
			return false // the parts stand over other columns than it seems
		}
		if f := h.Words[strings.Join(name.Words(folded), " ")].Field; f == name.FieldFrom || f == name.FieldTo {
			return false
		}
	}
	n, _ := over.Filled()
	first := len(over.Cells) > 0 && over.Cells[0] != "" && len(r.Cells) > 0 && r.Cells[0] != ""
	return says > 0 && n > 1 && first && !h.IsHead(over) && (n > 2 || !h.IsHead(r) || areNamed(below))
}

// areNamed reports whether the first cell of each of some rows is a pin and its name, "2 (GND)".
func areNamed(rows []table.Row) bool {
	return !slices.ContainsFunc(rows, func(r table.Row) bool {
		_, first := r.Filled()
		_, called := pinOf(first)
		return called == "" && first != ""
	})
}

// isColourHead reports whether a folded heading is known for colours.
func isColourHead(h shape.Headings, folded string) bool {
	return h.Words[strings.Join(name.Words(folded), " ")].Field == name.FieldColour
}

// isOfPins reports whether the last word of a folded heading, or the one before a number sign, is one for pins or for what has them.
func isOfPins(folded string) bool {
	w := strings.Fields(strings.TrimRight(folded, " #.:"))
	if len(w) == 0 {
		return strings.Contains(folded, "#")
	}
	last := w[len(w)-1]
	return pinword.Is(last) || plugword.Is(last) || words.IsNumberWord(last) ||
		slices.Contains([]string{"header", "probe", "lead", "leads"}, last)
}

// look says what the cells of each column are.
func (x *columns) look(h shape.Headings) {
	x.pins = make([]kind, len(x.head))
	x.signal, x.colour, x.names = -1, -1, -1
	for k, head := range x.head {
		folded := table.Fold(head)
		field := h.Words[strings.Join(name.Words(folded), " ")].Field
		switch {
		case x.signal < 0 && field == name.FieldSignal:
			x.signal = k
		case x.colour < 0 && (field == "" || field == name.FieldColour) && x.all(k, isColour):
			x.colour = k
		case field == name.FieldPin, field == name.FieldConnector, field == name.FieldFrom, field == name.FieldTo:
			x.placed = true
		case field != "", isOfValues(folded):
		case x.numbersIn(k) > 0:
			x.pins[k] = numbers
		case x.all(k, isCalled):
			x.pins[k] = called
		}
		x.odd = x.odd || field == "" && k != x.colour && !x.pinHead(k)
	}
}

// isColour reports whether a cell is a colour.
func isColour(cell string) bool {
	_, ok := value.ParseColour(cell, "")
	return ok && len(cell) > 1 && strings.ContainsFunc(cell, isLetter)
}

// isCalled reports whether a cell is a short name, as pins have.
func isCalled(cell string) bool {
	return len(cell) < 20 && strings.Count(cell, " ") < 3 && strings.ContainsFunc(cell, isLetter)
}

// all reports whether two cells of a column or more are such, and no other one is filled.
func (x *columns) all(k int, is func(string) bool) bool {
	n := 0
	for _, r := range x.rows {
		c := x.cell(r, k)
		if c == "" || value.IsNothing(c) {
			continue
		}
		if !is(c) {
			return false
		}
		n++
	}
	return n > 1
}

// numbersIn counts the cells of a column that are numbers of pins, each once; 0 where some other one is filled.
func (x *columns) numbersIn(k int) (n int) {
	seen := map[string]bool{}
	for _, r := range x.rows {
		c := x.cell(r, k)
		if c == "" || isNothing(c) {
			continue
		}
		pin, _ := pinOf(c)
		if name.IsCavities(pin) && strings.ContainsAny(pin, ",;") {
			continue // several that are empty
		}
		if !isPin(pin) || seen[pin] {
			return 0
		}
		seen[pin] = true
		n++
	}
	return n
}

// cell is a cell of a row; "" where there is none.
func (x *columns) cell(r table.Row, k int) string {
	if k < 0 || k >= len(r.Cells) {
		return ""
	}
	return r.Cells[k]
}

// ends are the columns of the pins of both parts; −1 where they can't be told. n is how many rows the headings are. Headings of one row
// say less, so both must be numbers, beside a column that says what the wires are. Those that are known tell more than this does, but
// where nothing says what the wires are.
func (x *columns) ends(known bool, n int) (near, far int) {
	near, far = -1, -1
	if known && n == 1 && (x.signal >= 0 || x.placed || x.odd || !x.pinHeads()) {
		return -1, -1
	}
	some := 0
	for k, is := range x.pins {
		switch {
		case is == numbers && near < 0:
			near = k
		case is == numbers && far < 0:
			far = k
		case is == numbers:
			return -1, -1 // three parts or more
		case is != other:
			some++
		}
	}
	if near < 0 || x.part(near) == "" || x.numbersIn(near) < leastRows || far >= 0 && x.numbersIn(far) < leastRows {
		return -1, -1
	}
	if x.areDotted(near) || far >= 0 && x.areDotted(far) {
		return -1, -1 // the cells name the connectors
	}
	if n == 1 && !x.odd && x.pinHeads() {
		n = 2
	}
	if far < 0 && n == 2 {
		for k := near + 1; k < len(x.pins) && far < 0; k++ {
			if x.pins[k] == called && x.part(k) != "" {
				far = k
				some--
			}
		}
	}
	if far < 0 || x.part(far) == "" || strings.EqualFold(x.part(near), x.part(far)) || n == 1 && (some > 0 || x.signal < 0) {
		return -1, -1
	}
	for k := near + 1; k < far; k++ {
		if x.pins[k] == called && x.names < 0 && isOfPins(table.Fold(x.head[k])) {
			x.names = k
		}
	}
	return near, far
}

// pinHeads reports whether two headings or more end with a word for pins.
func (x *columns) pinHeads() bool {
	n := 0
	for k := range x.head {
		if x.pinHead(k) {
			n++
		}
	}
	return n > 1
}

// pinHead reports whether a heading names a part and ends with a word for pins, "Desk pin".
func (x *columns) pinHead(k int) bool {
	w := strings.Fields(table.Fold(x.head[k]))
	return len(w) > 1 && pinword.Is(w[len(w)-1])
}

// part is the part that a heading names, without the words that say that its pins stand below; "" where it names none.
func (x *columns) part(k int) string {
	w := strings.Fields(x.head[k])
	if len(w) == 0 {
		return "" // a column without a heading
	}
	isWord := func(last string) bool {
		return pinword.Is(last) || words.IsNumberWord(last) || slices.Contains([]string{"", "name", "label", "func", "function"}, last)
	}
	for len(w) > 1 {
		if !isWord(table.Fold(strings.TrimRight(w[len(w)-1], "#.:"))) {
			break
		}
		w = w[:len(w)-1]
	}
	if first := table.Fold(strings.TrimRight(w[0], "#.:")); len(w) == 1 && (pinword.Is(first) || words.IsNumberWord(first) || first == "") {
		return ""
	}
	return strings.Join(withoutPinWord(w), " ")
}

// withoutPinWord takes a word for cavities and what joins it off the front of a heading: "Broche du calculateur", "Pin ECU".
func withoutPinWord(w []string) []string {
	of := w
	if pinword.Is(table.Fold(of[0])) {
		of = of[1:]
	}
	for len(of) > 0 && len(of) < len(w) && words.JoinsNouns(table.Fold(of[0])) {
		of = of[1:]
	}
	if len(of) == 0 || strings.Trim(of[0], "0123456789") == "" || table.Fold(of[0]) == "header" {
		return w // "Pin header", "Pin 1"
	}
	return of
}

// saysPins reports whether a heading has a word for cavities in front of a device or behind it.
func (x *columns) saysPins(k int) bool {
	is := func(w string) bool { return pinword.Is(w) && !words.IsNumberWord(w) }
	w := strings.Fields(x.head[k])
	return len(w) > 1 && (is(table.Fold(w[0])) || is(table.Fold(strings.TrimRight(w[len(w)-1], "#.:"))))
}

// isOfValues reports whether a folded heading says that values stand below it, or numbers of something else than pins.
func isOfValues(folded string) bool {
	for _, w := range strings.Fields(folded) {
		switch strings.Trim(w, ".:()#") {
		case "count", "qty", "width", "length", "len", "time", "delay", "year", "rate", "index", "total", "price", "cost", "version",
			"rev", "size", "quantity", "number", "v", "a", "level", "channel", "gpio", "port", "page", "row", "rows", "column",
			"columns", "cols", "id":
			return true
		}
	}
	return words.IsOfValues(folded) || name.IsOtherHead(folded)
}
