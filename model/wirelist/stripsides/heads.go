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

// look finds the terminals and the two sides in some headings: each begins with where its wire goes, the cavity there stands behind it, and
// both have a value of the same kind, or one is called the outer side and has the cable there. Where no heading says where wires go, each
// begins with its cable. group says what is below one heading; nil where nothing says so.
func look(h shape.Headings, heads []string, group []int) (s sides, ok bool) {
	s = sides{heads: make([]string, len(heads)), terminal: -1}
	fields := make([]name.Field, len(heads))
	wall := make([]int, len(heads))
	places := false
	for i, c := range heads {
		s.heads[i], wall[i] = withoutSide(h, c), words.SideOfWall(c)
		if fields[i] = fieldOf(h, s.heads[i]); fields[i] == "" && wall[i] >= 0 {
			fields[i] = name.FieldConnector
		}
		places = places || isPlace(fields[i])
	}
	now := -1 // the side that goes on
	var of []int
	next := 0 // the column behind the last of the side
	for i, c := range heads {
		f := fields[i]
		grouped := group == nil || now >= 0 && group[i] >= 0 && group[i] == group[of[now]]
		switch {
		case isPlace(f) || !places && f == name.FieldCable:
			if now++; now > 1 {
				return s, false
			}
			s.side[now] = side{place: i, pin: -1, field: f}
			if !places {
				s.side[now] = side{place: -1, pin: -1, values: []valueColumn{{i, f}}}
			}
			of, next = append(of, i), i+1
		case f == name.FieldPin && now >= 0 && i == s.side[now].place+1:
			s.side[now].pin, next = i, i+1
		case f == name.FieldPin && s.terminal < 0 && (group == nil || group[i] < 0):
			s.terminal = i
		case f == name.FieldPin:
			return s, false
		case isValue(f) && now >= 0 && i == next && !s.side[now].has(f) && grouped:
			s.side[now].values, next = append(s.side[now].values, valueColumn{i, f}), i+1
		case c != "":
			s.shared = append(s.shared, i)
		}
	}
	if now != 1 || s.terminal < 0 || group != nil && (group[of[0]] < 0 || group[of[1]] < 0 || group[of[0]] == group[of[1]]) {
		return s, false
	}
	for k := range s.side {
		s.shareNumbers(k)
	}
	both := false
	for k := range s.side {
		for _, v := range s.side[k].values {
			both = both || k == 1 && s.side[0].has(v.field)
			if !slices.ContainsFunc(s.kinds, func(o valueColumn) bool { return o.field == v.field }) {
				s.kinds = append(s.kinds, v)
			}
		}
	}
	outer := slices.IndexFunc(of, func(i int) bool { return wall[i] == 1 })
	return s, both || places && outer >= 0 && wall[of[1-outer]] == 0 && s.side[outer].has(name.FieldCable) &&
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

// withoutSide is a heading without the word for one side that it begins with, "Colour" of "In colour", where more than that is known.
func withoutSide(h shape.Headings, head string) string {
	first, rest, ok := strings.Cut(head, " ")
	if !ok || !isSideWord(first) || fieldOf(h, head) != "" || fieldOf(h, rest) == "" {
		return head
	}
	return rest
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
