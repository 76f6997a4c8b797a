package desk

import (
	"slices"
)

// Cursor is the row in hand of each page: its number, and the key of the row it was put on,
// which finds it again where rows come or go above it.
type Cursor struct {
	rows map[string]int
	keys map[string]string
}

func newCursor() Cursor { return Cursor{rows: map[string]int{}, keys: map[string]string{}} }

// cursorKey keeps a cursor for each thing that a screen is about, else for each screen of each
// branch.
func (m *Model) cursorKey() string {
	top := string(m.Top())
	if n := len(m.Stack); n > 0 && m.Stack[n-1].Of != "" {
		return top + "\x00\x00" + m.Stack[n-1].Of
	}
	if m.Branch < len(m.H.Branches) {
		return top + "\x00" + m.H.Branches[m.Branch].ID
	}
	return top
}

// At is the row in hand, kept within the page. Where rows came or went above it,
// it is where the row is now.
func (m *Model) At(p Page) int {
	key := m.cursorKey()
	row, been := m.Cursor.rows[key]
	if !been {
		row = p.Start
	}
	at := p.Past(max(0, min(row, len(p.Rows)-1)), 1)
	if on := m.Cursor.keys[key]; on != "" && at < len(p.Rows) && p.Rows[at].Key != on {
		if i := slices.IndexFunc(p.Rows, func(r Row) bool { return r.Key == on }); i >= 0 {
			return i
		}
	}
	return at
}

// Past is the row that a cursor comes to rest on which goes to a row by one step or many: no heading,
// where there is another row that way or else the other.
func (p *Page) Past(at, by int) int {
	for _, by := range []int{by, -by} {
		for k := at; k >= 0 && k < len(p.Rows); k += by {
			if !p.Rows[k].Heads {
				return k
			}
		}
	}
	return at
}

// Hand is the page in front with its row in hand; nil where it has no rows.
func (m *Model) Hand() (Page, *Row) {
	p := m.Page(m.ListWidth())
	if len(p.Rows) == 0 && p.Turn != nil {
		return p, &Row{Step: p.Turn}
	}
	if len(p.Rows) == 0 {
		return p, nil
	}
	return p, &p.Rows[m.At(p)]
}

// Put puts the cursor on a row; key is the row's own, or "" to go by its number alone.
func (m *Model) Put(row int, key string) {
	m.Cursor.rows[m.cursorKey()] = row
	m.PutOn(key)
}

// PutOn puts the cursor on the row with a key, wherever that comes to stand.
func (m *Model) PutOn(key string) {
	if key == "" {
		delete(m.Cursor.keys, m.cursorKey())
		return
	}
	m.Cursor.keys[m.cursorKey()] = key
}

// putNext puts the cursor on the row below the one in hand, where there is one.
func putNext(m *Model) {
	p := m.Page(m.ListWidth())
	if at := p.Past(m.At(p)+1, 1); at < len(p.Rows) {
		m.Put(at, p.Rows[at].Key)
	}
}

// Settle leaves the cursor of a first visit where it began, whatever comes above it.
func (m *Model) Settle(p Page) {
	if _, been := m.Cursor.rows[m.cursorKey()]; been || len(p.Rows) == 0 {
		return
	}
	at := m.At(p)
	m.Put(at, p.Rows[at].Key)
}

// Unput forgets where the cursor was: the page begins at its start again.
func (m *Model) Unput() {
	delete(m.Cursor.rows, m.cursorKey())
	delete(m.Cursor.keys, m.cursorKey())
}

// nothingInFront reports whether the page in front has nothing left to choose or to read.
func (m *Model) nothingInFront() bool {
	p := m.Page(m.ListWidth())
	return len(p.Rows) == 0 && p.Widget == nil
}
