package file

import (
	"fmt"
	"slices"
	"strings"

	"contralay/model"
	"contralay/model/file/schema"
)

// Differences says in plain lines what b has other than a, in the order of the
// file: "wire 101: size "22" was "20"". It knows no table by name, so a new key is
// told like the others. Equal documents give none.
func Differences(a, b Document) []string {
	a.Harness, b.Harness = apart(a.Harness, b.Harness)
	return differences(a, b)
}

func differences(a, b Document) []string {
	was, is := writtenTables(a), writtenTables(b)
	old := map[string]written{}
	for _, e := range was {
		old[e.name] = e
	}
	var out []string
	seen := map[string]bool{}
	for _, e := range is {
		seen[e.name] = true
		o, there := old[e.name]
		switch {
		case !there:
			out = append(out, e.name+" is new")
		default:
			out = append(out, differing(o, e)...)
		}
	}
	for _, e := range was {
		if !seen[e.name] {
			out = append(out, e.name+" was removed")
		}
	}
	return out
}

// apart leaves out of two harnesses the things with an id that are the same in both: after an
// edit they are nearly all of it, and writing them out costs more than the edit.
func apart(a, b model.Harness) (model.Harness, model.Harness) {
	a.Terminations, b.Terminations = unlike(a.Terminations, b.Terminations, func(t *model.Termination) string { return t.ID })
	a.Breakouts, b.Breakouts = unlike(a.Breakouts, b.Breakouts, func(k *model.Breakout) string { return k.ID })
	a.Splices, b.Splices = unlike(a.Splices, b.Splices, func(s *model.Splice) string { return s.ID })
	a.Wires, b.Wires = unlike(a.Wires, b.Wires, func(w *model.Wire) string { return w.ID })
	a.Feeds, b.Feeds = unlike(a.Feeds, b.Feeds, func(f *model.Feed) string { return f.ID })
	a.Units, b.Units = unlike(a.Units, b.Units, func(u *model.Unit) string { return u.ID })
	a.Branches, b.Branches = unlike(a.Branches, b.Branches, func(k *model.Branch) string { return k.ID })
	return a, b
}

// unlike leaves out what stands in the same place of both lists, under one id.
func unlike[T any](a, b []T, id func(*T) string) (restA, restB []T) {
	if len(a) != len(b) {
		return a, b
	}
	if len(a) > 0 && &a[0] == &b[0] {
		return nil, nil
	}
	for k := range a {
		if id(&a[k]) == "" || !model.Alike(&a[k], &b[k]) {
			restA, restB = append(restA, a[k]), append(restB, b[k])
		}
	}
	return restA, restB
}

// written is one table of a file as it is written.
type written struct {
	name string // "wire 101", "branch T1, layer 2"
	keys []line
}

// line is one key and the text of its value.
type line struct{ name, value string }

// writtenTables parts the text of a document into its tables, each under the name a
// person would give it: by its id, else by its place.
func writtenTables(d Document) []written {
	out := []written{{name: "the file"}}
	var trail []string // names of the tables it stands in
	var counts []map[string]int
	for _, raw := range strings.Split(string(Encode(Document{Harness: d.Harness})), "\n") {
		t := strings.TrimSpace(raw)
		depth := (len(raw) - len(strings.TrimLeft(raw, " "))) / 2
		switch {
		case t == "":
		case strings.HasPrefix(t, "["):
			kind := strings.Trim(t, "[]")
			kind = kind[strings.LastIndexByte(kind, '.')+1:]
			trail, counts = trail[:min(depth, len(trail))], counts[:min(depth+1, len(counts))]
			for len(counts) <= depth {
				counts = append(counts, map[string]int{})
			}
			n := counts[depth][kind]
			counts[depth][kind]++
			name := strings.ReplaceAll(kind, "_", " ")
			if strings.HasPrefix(t, "[[") {
				if kind != "layer" {
					n++ // the first layer is the centre, 0
				}
				name += fmt.Sprintf(" %d", n)
			}
			trail = append(trail, name)
			out = append(out, written{name: strings.Join(trail, ", ")})
		default:
			key, value, _ := strings.Cut(t, "=")
			l := line{strings.TrimSpace(key), strings.TrimSpace(value)}
			e := &out[len(out)-1]
			e.keys = append(e.keys, l)
			if (l.name == "id" || l.name == "name" && strings.Contains(e.name, "aside")) && len(e.keys) == 1 {
				at := len(trail) - 1
				kind, _, _ := strings.Cut(trail[at], " ")
				trail[at] = kind + " " + strings.Trim(l.value, `"`)
				e.name = strings.Join(trail, ", ")
			}
		}
	}
	return out
}

// differing is the keys of one table that are not as they were.
func differing(was, is written) []string {
	var out []string
	value := func(e written, name string) string {
		if i := slices.IndexFunc(e.keys, func(l line) bool { return l.name == name }); i >= 0 {
			return e.keys[i].value
		}
		return ""
	}
	for _, l := range is.keys {
		switch o := value(was, l.name); {
		case o == l.value:
		case o == "":
			out = append(out, fmt.Sprintf("%s: %s is %s; it was not given before", is.name, l.name, schema.Short(l.value)))
		default:
			out = append(out, fmt.Sprintf("%s: %s is %s; it was %s", is.name, l.name, schema.Short(l.value), schema.Short(o)))
		}
	}
	for _, l := range was.keys {
		if value(is, l.name) == "" {
			out = append(out, fmt.Sprintf("%s: %s was %s; now it is not given", is.name, l.name, schema.Short(l.value)))
		}
	}
	return out
}
