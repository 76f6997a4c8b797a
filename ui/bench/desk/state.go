package desk

import (
	"reflect"

	"contralay/calc/sheet"
)

// states are what the screens keep for themselves, by the type of it.
type states map[reflect.Type]any

// State is what one screen keeps in the bench for itself: the T of this bench, made when it is
// asked for first. A package that keeps its T unexported shares it with nobody. A bench that is
// only tried (Try) has the same states as the one it was made of.
func State[T any](m *Model) *T {
	key := reflect.TypeFor[T]()
	if v, ok := m.states[key]; ok {
		return v.(*T)
	}
	v := new(T)
	m.states[key] = v
	return v
}

// Kept holds what a sheet and a branch settle, by name: it is made once and holds for the
// frames that follow, until another sheet or another branch is asked about. Its zero value is
// empty. What a sheet settles alone is kept for branch 0.
type Kept[T any] struct {
	of     *sheet.Sheet
	branch int
	made   map[string]T
}

// Find is what is kept under a name.
func (k *Kept[T]) Find(s *sheet.Sheet, branch int, name string) (T, bool) {
	if k.of != s || k.branch != branch {
		var none T
		return none, false
	}
	v, ok := k.made[name]
	return v, ok
}

// Put keeps v under a name.
func (k *Kept[T]) Put(s *sheet.Sheet, branch int, name string, v T) {
	if k.of != s || k.branch != branch || k.made == nil {
		k.of, k.branch, k.made = s, branch, map[string]T{}
	}
	k.made[name] = v
}

// Get is what is kept under a name, made where it is not there yet.
func (k *Kept[T]) Get(s *sheet.Sheet, branch int, name string, make func() T) T {
	if v, ok := k.Find(s, branch, name); ok {
		return v
	}
	v := make()
	k.Put(s, branch, name, v)
	return v
}

// Once makes rows that the sheet and the branch in hand settle, and keeps them.
func (m *Model) Once(name string, make func() []Row) []Row {
	return m.rows.Get(m.Sheet, m.Branch, name, make)
}
