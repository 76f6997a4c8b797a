package stripsides

import (
	"slices"
	"strings"

	"contralay/model/wirelist/column"
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/words"
)

// valueColumn is a column of a value of the wire on one side.
type valueColumn struct {
	at    int
	field name.Field
}

// side is what stands on one side of the terminals.
type side struct {
	place, pin int // −1 where it has none
	field      name.Field
	values     []valueColumn
}

// sides are the columns of such a table.
type sides struct {
	heads    []string
	terminal int
	side     [2]side
	kinds    []valueColumn // the values that a side has, each once
	shared   []int         // the other columns that have a heading
	of       string        // the strip or the box
	mirrored bool          // the cavities of its devices stand outside them on either side
}

// headsAt reads the headings that some rows begin with, in one row or in two, and says in how many.
func headsAt(h shape.Headings, rows []table.Row) (s sides, n int, ok bool) {
	if len(rows) > 2 && rows[1].Line == rows[0].Line+1 {
		heads, group := joined(rows[0].Cells, rows[1].Cells)
		if s, ok = look(h, heads, group); ok {
			return s, 2, true
		}
	}
	s, ok = look(h, rows[0].Cells, nil)
	return s, 1, ok
}

// joined is the headings of two rows, of which the first stands over several of the second, and says for each column which heading of the
// first row it is below, −1 for none.
func joined(above, below []string) (heads []string, group []int) {
	over := -1
	for i := range max(len(above), len(below)) {
		up, low := cell(above, i), cell(below, i)
		if up != "" && (over < 0 || up != cell(above, over)) {
			over = i
		}
		switch {
		case low == "":
			heads, group, over = append(heads, up), append(group, -1), -1
		case over < 0:
			heads, group = append(heads, low), append(group, -1)
		default:
			heads, group = append(heads, low), append(group, over)
		}
	}
	return heads, group
}

// look finds the terminals and the two sides in some headings: of each kind that comes twice one column is of either side, and all of one
// side stand before all of the other. One side has a value of its own where both have, or where it is called the outer one and has the
// cable. Where no heading says where wires go, their cables do for that. group says what is below one heading; nil where nothing says so.
func look(h shape.Headings, heads []string, group []int) (s sides, ok bool) {
	s = sides{heads: make([]string, len(heads))}
	f := fields{of: make([]name.Field, len(heads)), at: map[name.Field][]int{}}
	wall := make([]int, len(heads))
	for i, c := range heads {
		s.heads[i], wall[i] = withoutSide(h, c), words.SideOfWall(c)
		if f.of[i] = fieldOf(h, s.heads[i]); f.of[i] == "" && wall[i] >= 0 {
			f.of[i] = name.FieldConnector
		}
		f.at[f.of[i]] = append(f.at[f.of[i]], i)
	}
	places := f.places()
	starts := places
	if len(places) == 0 {
		starts = f.at[name.FieldCable]
	}
	if s.terminal = f.terminal(s.heads, starts); s.terminal < 0 || len(starts) != 2 ||
		group != nil && (group[s.terminal] >= 0 || group[starts[0]] < 0 || group[starts[1]] < 0 || group[starts[0]] == group[starts[1]]) {
		return s, false
	}
	for k := range s.side {
		s.side[k] = side{place: -1, pin: -1}
		if len(places) > 0 {
			s.side[k].place, s.side[k].field = places[k], f.of[places[k]]
		}
	}
	for i, c := range heads {
		switch k := f.sideOf(i, starts, group); {
		case i == s.terminal || slices.Contains(places, i) || c == "":
		case f.of[i] == name.FieldPin && k >= 0 && s.side[k].pin < 0:
			s.side[k].pin = i
		case f.of[i] == name.FieldPin:
			return s, false
		case isValue(f.of[i]) && k >= 0 && !s.side[k].has(f.of[i]):
			s.side[k].values = append(s.side[k].values, valueColumn{i, f.of[i]})
		default:
			s.shared = append(s.shared, i)
		}
	}
	return s, s.areApart() && s.areTwo(starts, wall)
}

// fields are what some headings head, and where each stands.
type fields struct {
	of []name.Field
	at map[name.Field][]int
}

// places are the columns that say where wires go.
func (f fields) places() (all []int) {
	for i, of := range f.of {
		if isPlace(of) {
			all = append(all, i)
		}
	}
	return all
}

// terminal is the column of the terminals: the one of cavities that is headed so, else the one before both places, or between them; −1
// where there is none.
func (f fields) terminal(heads []string, starts []int) int {
	pins := f.at[name.FieldPin]
	said := slices.DeleteFunc(slices.Clone(pins), func(i int) bool { return !isTerminal(heads[i]) })
	switch {
	case len(said) == 1:
		return said[0]
	case len(pins) == 0 || len(starts) != 2:
		return -1
	case pins[0] < starts[0] && (len(pins) != 2 || starts[0] > 1 || len(said) == 0):
		return pins[0]
	case len(pins) == 3:
		return pins[1]
	}
	return -1
}

// sideOf is the side that a column is of, −1 where it is of neither or of both: by the heading above it; else by the other column of its
// kind, or right beside the place of its side, where cavities stand, or in the row of columns from there on.
func (f fields) sideOf(i int, starts, group []int) int {
	if group != nil {
		return slices.IndexFunc(starts, func(at int) bool { return group[i] >= 0 && group[i] == group[at] })
	}
	if f.of[i] == name.FieldPin {
		return slices.IndexFunc(starts, func(at int) bool { return i == at+1 || i == at-1 })
	}
	if same := f.at[f.of[i]]; len(same) == 2 {
		return slices.Index(same, i)
	}
	for k := i - 1; k >= 0; k-- {
		if at := slices.Index(starts, k); at >= 0 {
			return at
		}
		if f.of[k] != name.FieldPin && !isValue(f.of[k]) {
			break
		}
	}
	return -1
}

// areApart reports whether all columns of one side stand before all of the other.
func (s *sides) areApart() bool {
	last, first := -1, len(s.heads)
	for k, side := range s.side {
		of := []int{side.place, side.pin}
		for _, v := range side.values {
			of = append(of, v.at)
		}
		for _, i := range of {
			if k == 0 {
				last = max(last, i)
			} else if i >= 0 {
				first = min(first, i)
			}
		}
	}
	return last < first
}

// areTwo reports whether the wires on both sides are two: they have a value each of the same kind, or the cavities stand outside the places
// on either side, as if in a mirror, or one side has the cable.
func (s *sides) areTwo(starts, wall []int) bool {
	both := false
	for k := range s.side {
		s.shareNumbers(k)
	}
	for k := range s.side {
		for _, v := range s.side[k].values {
			both = both || k == 1 && s.side[0].has(v.field)
			if !slices.ContainsFunc(s.kinds, func(o valueColumn) bool { return o.field == v.field }) {
				s.kinds = append(s.kinds, v)
			}
		}
	}
	s.mirrored = s.side[0].pin >= 0 && s.side[0].pin < s.side[0].place && s.side[1].pin > s.side[1].place
	outer := slices.IndexFunc(starts, func(i int) bool { return wall[i] == 1 })
	return both || s.mirrored || outer >= 0 && wall[starts[1-outer]] == 0 && s.side[outer].has(name.FieldCable) &&
		len(s.side[1-outer].values) == 0
}

// shareNumbers gives both sides the numbers of the wires that stand behind one side alone; those of cores are of that side.
func (s *sides) shareNumbers(k int) {
	s.side[k].values = slices.DeleteFunc(s.side[k].values, func(v valueColumn) bool {
		if v.field != name.FieldWire || s.side[1-k].has(v.field) || column.HeadsCores(s.heads[v.at]) {
			return false
		}
		s.shared = append(s.shared, v.at)
		return true
	})
}

// withoutSide is a heading without the word for one side that it begins or ends with, "Colour" of "In colour", where more than that is
// known.
func withoutSide(h shape.Headings, head string) string {
	if fieldOf(h, head) != "" {
		return head
	}
	if first, rest, ok := strings.Cut(head, " "); ok && isSideWord(first) && fieldOf(h, rest) != "" {
		return rest
	}
	if at := strings.LastIndexByte(head, ' '); at > 0 && isSideWord(head[at+1:]) && fieldOf(h, head[:at]) != "" {
		return head[:at]
	}
	return head
}

// isSideWord reports whether a word is for one side of a terminal. From memory, no source.
func isSideWord(w string) bool {
	switch table.Fold(strings.Trim(w, ".:")) {
	case "in", "out", "incoming", "outgoing", "left", "right", "links", "rechts", "ein", "aus", "ankommend", "abgehend", "zu", "ab",
		"inkommande", "utgaende", "gauche", "droite", "entree", "sortie", "arrivee", "depart", "entrada", "salida", "ingresso", "uscita",
		"inkomend", "uitgaand", "ind", "ud", "inn", "ut":
		return true
	}
	return false
}

// has reports whether a side has a value of a kind.
func (s side) has(f name.Field) bool {
	return slices.ContainsFunc(s.values, func(v valueColumn) bool { return v.field == f })
}

// fieldOf is what a heading heads; a word for a terminal heads cavities.
func fieldOf(h shape.Headings, head string) name.Field {
	f := h.Words[strings.Join(name.Words(table.Fold(head)), " ")].Field
	if f == "" && (isTerminal(head) || name.IsPinWord(table.Fold(head))) {
		return name.FieldPin
	}
	if f == "" && column.HeadsCores(head) {
		return name.FieldColour // "Core colour"
	}
	return f
}

// isPlace reports whether a column says where a wire goes.
func isPlace(f name.Field) bool {
	return f == name.FieldFrom || f == name.FieldTo || f == name.FieldConnector
}

// isValue reports whether a column says something of a wire that is its own.
func isValue(f name.Field) bool {
	return f == name.FieldColour || f == name.FieldGauge || f == name.FieldWire || f == name.FieldCable
}

// isTerminal reports whether a heading is a word for a terminal, which a plug does not have. From memory, no source.
func isTerminal(head string) bool {
	switch table.Fold(strings.Trim(head, " .:")) {
	case "terminal", "term", "terminal no", "klemme", "klem", "klemnr", "klemme nr", "plint", "plint nr", "borne", "borne no", "borna",
		"borne nr", "morsetto", "klemma", "klemmenr", "zacisk", "svorka", "liitin", "riviliitin", "kapocs", "terminal nr":
		return true
	}
	return false
}
