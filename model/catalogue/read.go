package catalogue

import (
	"errors"
	"fmt"
	"io"
	"maps"
	"slices"
	"strconv"
	"strings"

	"github.com/BurntSushi/toml"

	"contralay/model/where"
)

// MostBytes is the size of a file that is still read, in bytes. The largest table
// that comes with the program has some 20,000: this is a stop, not a limit of use.
const MostBytes = 8 << 20

// tables are the tables of a file in the order they are read.
var tables = [...]string{"wire", "tube", "boot", "transition", "contact", "insert", "face", "splice", "device", "source",
	"person", "instrument", "stock", "correction"}

// Read reads a catalogue file. The name is only for messages.
//
// It is strict: a table or key it does not know, by exact case; an entry without
// source or standing; a number that is not one, is out of its range or
// contradicts another of the entry; two entries of one id: each is an error that
// names file, entry, key and what is allowed, one EntryError a line. On an error
// the Catalogue is nil.
func Read(r io.Reader, name string) (*Catalogue, error) {
	data, err := io.ReadAll(io.LimitReader(r, MostBytes+1))
	if err != nil {
		return nil, fmt.Errorf("%s: %w", name, err)
	}
	if len(data) > MostBytes {
		return nil, fmt.Errorf("%s is larger than %d bytes: that is not a catalogue", name, MostBytes)
	}
	text := string(data)
	found := where.Scan(text)
	if found.TooDeep > 0 {
		return nil, EntryError{File: name, Line: found.TooDeep, Problem: "brackets in brackets, or the parts of a key, are nested too deep",
			Allowed: strconv.Itoa(where.MaxDeep)}
	}
	var file map[string]any
	if _, err := toml.Decode(text, &file); err != nil {
		var at toml.ParseError
		if errors.As(err, &at) {
			return nil, EntryError{File: name, Line: at.Position.Line, Problem: "this is not TOML: " + at.Message}
		}
		return nil, fmt.Errorf("%s: this is not TOML: %w", name, err)
	}
	b := builder{file: name, lines: found.Lines, c: empty(), seen: map[string]bool{}}
	for _, key := range slices.Sorted(maps.Keys(file)) {
		if !slices.Contains(tables[:], key) {
			b.errs = append(b.errs, EntryError{File: name, Line: b.lines.Line("." + key), Key: key, Problem: "unknown table",
				Allowed: strings.Join(tables[:], ", ")})
		}
	}
	for _, table := range tables {
		if v, ok := file[table]; ok {
			b.table(table, v)
		}
	}
	if len(b.errs) > 0 {
		return nil, errors.Join(b.errs...)
	}
	slices.SortFunc(b.c.Tubes, compareTubes)
	return b.c, nil
}

func empty() *Catalogue {
	return &Catalogue{
		Wires:       map[WireKey]Wire{},
		Boots:       map[string]Boot{},
		Transitions: map[string]Transition{},
		Contacts:    map[string]Contact{},
		Inserts:     map[string]Insert{},
		Faces:       map[string]Face{},
		Splices:     map[string]Splice{},
		Sources:     map[string]Source{},
	}
}

// builder gathers the entries of one file and what is wrong with them.
type builder struct {
	file  string
	lines where.Lines
	c     *Catalogue
	seen  map[string]bool // "table id"
	errs  []error
}

// table reads every entry of one table in file order.
func (b *builder) table(table string, v any) {
	rows, ok := tableRows(v)
	if !ok {
		b.errs = append(b.errs, EntryError{File: b.file, Line: b.lines.Line("." + table), Key: table,
			Problem: "it is not a list of tables", Allowed: "[[" + table + "]]"})
		return
	}
	for i, row := range rows {
		e := &entry{file: b.file, lines: b.lines, path: fmt.Sprintf(".%s[%d]", table, i), name: entryName(table, i, row), vals: row}
		switch table {
		case "wire":
			b.wire(e)
		case "tube":
			b.tube(e)
		case "boot":
			b.boot(e)
		case "transition":
			b.transition(e)
		case "contact":
			b.contact(e)
		case "insert":
			b.insert(e)
		case "face":
			b.face(e)
		case "splice":
			b.splice(e)
		case "device":
			b.device(e)
		case "source":
			b.source(e)
		case "person":
			b.person(e)
		case "instrument":
			b.instrument(e)
		case "stock":
			b.stock(e)
		case "correction":
			b.correction(e)
		}
		b.errs = append(b.errs, e.done()...)
	}
}

// tableRows reads [[x]] and x = [{…}] alike.
func tableRows(v any) ([]map[string]any, bool) {
	switch x := v.(type) {
	case []map[string]any:
		return x, true
	case []any:
		rows := make([]map[string]any, len(x))
		for i, r := range x {
			row, ok := r.(map[string]any)
			if !ok {
				return nil, false
			}
			rows[i] = row
		}
		return rows, true
	}
	return nil, false
}

// entryName is how a message calls an entry.
func entryName(table string, i int, row map[string]any) string {
	name := table
	for _, key := range []string{"spec", "id", "size"} {
		if s, ok := row[key].(string); ok && strings.TrimSpace(s) != "" && (key != "size" || table == "wire" || table == "contact") {
			name += fmt.Sprintf(" %q", s)
		}
	}
	if name == table {
		return fmt.Sprintf("%s number %d", table, i+1)
	}
	return name
}

// claim takes a name for an entry; a name that is taken is wrong.
func (b *builder) claim(e *entry, table, key, id string) {
	if id == "" {
		return // said already
	}
	if b.seen[table+" "+id] {
		e.wrong(key, fmt.Sprintf("%q is in the file already", id), "each "+table+" once")
	}
	b.seen[table+" "+id] = true
}
