package schema

import (
	"slices"

	"contralay/model"
)

// node is a record of a harness whose type is not known: its keys and the tables in it.
type node interface {
	get(key string) any
	put(key string, raw any) problem
	clear(key string) problem
	musts() []string
	count(table string) int
	open(table string, index int, own bool) node // nil where there is none; own: it may be changed
	insert(table string, index int) bool
	remove(table string, index int) bool
	move(table string, from, to int) bool
}

// record is a T with its schema.
type record[T any] struct {
	t table[T]
	v *T
}

// reach is the record at a place; nil where there is none. To own it is to change it: each list on
// the way is then one of its own.
func reach(h *model.Harness, at At, own bool) node {
	var n node = &record[model.Harness]{whole, h}
	for _, s := range at {
		if n = n.open(s.Table, s.Index, own); n == nil {
			return nil
		}
	}
	return n
}

func (r *record[T]) get(key string) any {
	if k := r.t.find(key); k != nil {
		return k.raw(r.v)
	}
	return nil
}

func (r *record[T]) put(key string, raw any) problem {
	k := r.t.find(key)
	if k == nil {
		return r.t.unknown(key)
	}
	return k.put(r.v, raw)
}

func (r *record[T]) clear(key string) problem {
	k := r.t.find(key)
	switch {
	case k == nil:
		return r.t.unknown(key)
	case k.must || k.clear == nil:
		return problem("it must be given")
	}
	k.clear(r.v)
	return ""
}

func (r *record[T]) musts() []string {
	var out []string
	for _, k := range r.t.keys {
		if k.must {
			out = append(out, k.name)
		}
	}
	return out
}

func (r *record[T]) part(name string) part[T] {
	if i := slices.IndexFunc(r.t.parts, func(p part[T]) bool { return p.name() == name }); i >= 0 {
		return r.t.parts[i]
	}
	return nil
}

func (r *record[T]) count(table string) int {
	if p := r.part(table); p != nil {
		return p.count(r.v)
	}
	return 0
}

func (r *record[T]) open(table string, index int, own bool) node {
	if k := r.t.find(table); k != nil && k.open != nil && index == 0 {
		return k.open(r.v, own)
	}
	if p := r.part(table); p != nil && index >= 0 && index < p.count(r.v) {
		return p.open(r.v, index, own)
	}
	return nil
}

func (r *record[T]) insert(table string, index int) bool {
	p := r.part(table)
	return p != nil && index >= 0 && index <= p.count(r.v) && p.insert(r.v, index)
}

func (r *record[T]) remove(table string, index int) bool {
	p := r.part(table)
	return p != nil && index >= 0 && index < p.count(r.v) && p.remove(r.v, index)
}

func (r *record[T]) move(table string, from, to int) bool {
	p := r.part(table)
	return p != nil && min(from, to) >= 0 && max(from, to) < p.count(r.v) && p.move(r.v, from, to)
}

func (o one[T, S]) count(*T) int                  { return 1 }
func (o one[T, S]) open(v *T, _ int, _ bool) node { return &record[S]{o.inside, o.at(v)} }
func (o one[T, S]) insert(*T, int) bool           { return false }
func (o one[T, S]) remove(*T, int) bool           { return false }
func (o one[T, S]) move(*T, int, int) bool        { return false }

func (m many[T, S]) count(v *T) int { return len(*m.at(v)) }

func (m many[T, S]) open(v *T, i int, own bool) node {
	all := m.at(v)
	if own {
		*all = slices.Clone(*all)
	}
	return &record[S]{m.inside, &(*all)[i]}
}

func (m many[T, S]) insert(v *T, i int) bool {
	var none S
	all := m.at(v)
	*all = slices.Insert(slices.Clone(*all), i, none)
	return true
}

// remove leaves no list where it takes the last of it: a file has no empty list of tables.
func (m many[T, S]) remove(v *T, i int) bool {
	all := m.at(v)
	if *all = slices.Delete(slices.Clone(*all), i, i+1); len(*all) == 0 {
		*all = nil
	}
	return true
}

func (m many[T, S]) move(v *T, from, to int) bool {
	all := m.at(v)
	one := (*all)[from]
	*all = slices.Insert(slices.Delete(slices.Clone(*all), from, from+1), to, one)
	return true
}
