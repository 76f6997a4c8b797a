package main

import (
	"fmt"
	"go/ast"
	"math/rand"
	"slices"
	"strings"
)

// draw takes n mutants of some rooms by a seed. Each statement that can be changed is as likely as any
// other, and gives one mutant at most; within it each of its changes is as likely as any other. A mutant that
// does not compile is counted, and the next statement takes its place. None asked for is every change of every statement.
func draw(rooms []*room, n int, seed int64) (drawn []*mutant, statements, refused int, err error) {
	byOwner := map[ast.Node][]*mutant{}
	var owners []ast.Node
	for _, r := range rooms {
		for _, m := range r.mutants() {
			if byOwner[m.owner] == nil {
				owners = append(owners, m.owner)
			}
			byOwner[m.owner] = append(byOwner[m.owner], m)
		}
	}
	if n <= 0 {
		var all []*mutant
		for _, o := range owners {
			for _, m := range byOwner[o] {
				m.id = len(all) + 1
				all = append(all, m)
			}
		}
		drawn, err = compiling(all)
		return drawn, len(owners), len(all) - len(drawn), err
	}
	chance := rand.New(rand.NewSource(seed))
	chance.Shuffle(len(owners), func(i, j int) { owners[i], owners[j] = owners[j], owners[i] })
	statements = len(owners)
	next := 0
	for len(drawn) < n && next < len(owners) {
		var fresh []*mutant
		for len(drawn)+len(fresh) < n && next < len(owners) {
			of := byOwner[owners[next]]
			next++
			m := of[chance.Intn(len(of))]
			m.id = next
			fresh = append(fresh, m)
		}
		good, err := compiling(fresh)
		if err != nil {
			return nil, 0, 0, err
		}
		refused += len(fresh) - len(good)
		drawn = append(drawn, good...)
	}
	for i, m := range drawn {
		m.id = i + 1
	}
	return drawn, statements, refused, nil
}

// again are the mutants that survived by a log, whatever else has changed since.
func again(rooms []*room, log string) ([]*mutant, error) {
	alive := map[string]bool{}
	for line := range strings.Lines(log) {
		cells := strings.Split(strings.TrimSuffix(line, "\n"), "\t")
		if len(cells) > 2 && (cells[0] == survived || cells[0] == unseen) {
			alive[strings.Join(cells[1:len(cells)-1], "\t")] = true
		}
	}
	var all []*mutant
	for _, r := range rooms {
		for _, m := range r.mutants() {
			if key := m.key(); alive[key] {
				delete(alive, key)
				all = append(all, m)
				m.id = len(all)
			}
		}
	}
	return compiling(all)
}

// compiling leaves out the mutants that do not compile.
func compiling(all []*mutant) ([]*mutant, error) {
	bad := map[*mutant]bool{}
	byRoom := map[*room][]*mutant{}
	for _, m := range all {
		if m.whole != nil {
			byRoom[m.room] = append(byRoom[m.room], m)
			continue
		}
		faults, err := m.room.faults(map[*source]string{m.file: m.alone()})
		if err != nil {
			return nil, fmt.Errorf("%s: %w", m.place(), err)
		}
		bad[m] = len(faults) > 0
	}
	for r, of := range byRoom {
		texts, where := r.instrumented(of)
		faults, err := r.faults(texts)
		if err != nil {
			return nil, fmt.Errorf("%s: %w", r.path, err)
		}
		for s, at := range faults {
			for _, offset := range at {
				found := false
				for m, sp := range where {
					if m.file == s && sp.from <= offset && offset <= sp.to {
						bad[m], found = true, true
					}
				}
				if !found {
					return nil, fmt.Errorf("%s: its copy does not compile near %q", s.path, texts[s][max(0, offset-40):offset])
				}
			}
		}
	}
	return slices.DeleteFunc(slices.Clone(all), func(m *mutant) bool { return bad[m] }), nil
}

// instrumented are the texts of the files of a room that hold some mutants within functions.
func (r *room) instrumented(all []*mutant) (map[*source]string, map[*mutant]span) {
	texts, where := map[*source]string{}, map[*mutant]span{}
	for _, s := range r.files {
		var of []*mutant
		for _, m := range all {
			if m.file == s && m.whole != nil {
				of = append(of, m)
			}
		}
		if len(of) == 0 {
			continue
		}
		text, spans := s.instrument(of)
		texts[s] = text
		for m, sp := range spans {
			where[m] = sp
		}
	}
	return texts, where
}

// place is the file and line of a mutant.
func (m *mutant) place() string {
	return fmt.Sprintf("%s:%d", m.file.path, m.line())
}

func (m *mutant) line() int { return m.file.file.Line(m.file.file.Pos(m.from)) }

// key names a mutant so that it is found again after other lines have changed: file, declaration, the text of
// its line with the column in it, what is replaced and by what.
func (m *mutant) key() string {
	start := m.from
	for start > 0 && m.file.text[start-1] != '\n' {
		start--
	}
	end := m.from
	for end < len(m.file.text) && m.file.text[end] != '\n' {
		end++
	}
	line := string(m.file.text[start:end])
	trimmed := strings.TrimSpace(line)
	column := m.from - start - strings.Index(line, trimmed)
	return strings.Join([]string{m.file.path, m.function, flat(trimmed, 200), fmt.Sprint(column),
		flat(string(m.file.text[m.from:m.to]), 100), flat(m.becomes, 100)}, "\t")
}

// change tells the fault in a few words.
func (m *mutant) change() string {
	key := strings.Split(m.key(), "\t")
	return fmt.Sprintf("%s: %s   [%s => %s]", m.operator, key[2], flat(key[4], 60), flat(key[5], 60))
}

// flat is a text on one line, cut where it is too long.
func flat(s string, most int) string {
	s = strings.Join(strings.Fields(s), " ")
	if len(s) > most {
		s = strings.ToValidUTF8(s[:most], "") + "…"
	}
	return s
}
