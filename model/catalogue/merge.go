package catalogue

import (
	"maps"
	"slices"
)

// Merge returns a new catalogue with the entries of both; where both have one,
// the entry of over stands, whole. Neither argument is changed; a nil one is
// empty.
//
// An insert replaces every insert it shares a name with and takes over the names
// it lacks, so that two names of one arrangement never tell two stories. A source that an entry
// refers to by its id in braces, one of either catalogue, stands in its place after it.
func Merge(base, over *Catalogue) *Catalogue {
	if base == nil {
		base = empty()
	}
	if over == nil {
		over = empty()
	}
	merged := &Catalogue{
		Wires:       mergeMap(base.Wires, over.Wires),
		Tubes:       mergeTubes(base.Tubes, over.Tubes),
		Boots:       mergeMap(base.Boots, over.Boots),
		Transitions: mergeMap(base.Transitions, over.Transitions),
		Contacts:    mergeMap(base.Contacts, over.Contacts),
		Inserts:     mergeInserts(base, over),
		Faces:       mergeMap(base.Faces, over.Faces),
		Splices:     mergeMap(base.Splices, over.Splices),
		Devices:     mergeDevices(base.Devices, over.Devices),
		Sources:     mergeMap(base.Sources, over.Sources),
		People:      mergeByID(base.People, over.People, func(p Person) string { return p.ID }),
		Instruments: mergeByID(base.Instruments, over.Instruments, func(i Instrument) string { return i.ID }),
		Stock:       mergeByID(base.Stock, over.Stock, Stock.key),
		Corrections: slices.Concat(base.Corrections, over.Corrections),
	}
	merged.cite()
	return merged
}

func mergeMap[K comparable, V any](base, over map[K]V) map[K]V {
	m := make(map[K]V, len(base)+len(over))
	maps.Copy(m, base)
	maps.Copy(m, over)
	return m
}

func mergeTubes(base, over []Tube) []Tube {
	out := make([]Tube, 0, len(base)+len(over))
	theirs := map[string]bool{}
	for _, t := range over {
		theirs[t.ID] = true
	}
	for _, t := range base {
		if !theirs[t.ID] {
			out = append(out, t)
		}
	}
	out = append(out, over...)
	slices.SortFunc(out, compareTubes)
	return out
}

func mergeInserts(base, over *Catalogue) map[string]Insert {
	m := maps.Clone(base.Inserts)
	if m == nil {
		m = map[string]Insert{}
	}
	for _, id := range over.InsertIDs() {
		i := over.Inserts[id]
		names := i.Names()
		for _, name := range i.Names() {
			old, ok := base.Inserts[name]
			if !ok {
				continue
			}
			for _, n := range old.Names() {
				if _, taken := over.Inserts[n]; !taken && !slices.Contains(names, n) {
					names = append(names, n)
				}
			}
		}
		i.Aliases = slices.Clip(names[1:])
		for _, name := range names {
			m[name] = i
		}
	}
	return m
}

// mergeDevices puts a kind in the place of the one of its id, and new ones behind the last of
// their group, so that a list stays in its order.
func mergeDevices(base, over []Device) []Device {
	out := slices.Clone(base)
	for _, d := range over {
		if k := slices.IndexFunc(out, func(o Device) bool { return o.ID == d.ID }); k >= 0 && out[k].Group == d.Group {
			out[k] = d
			continue
		} else if k >= 0 {
			out = slices.Delete(out, k, k+1)
		}
		last := len(out)
		for k := range out {
			if out[k].Group == d.Group {
				last = k + 1
			}
		}
		out = slices.Insert(out, last, d)
	}
	return out
}
