package values

import (
	"contralay/model"
	"contralay/model/file/schema"
)

// Ids and removals touch more than one record: these are the two places where such edits are made.

// renamed gives a record another id. What names it is refused, and stays.
func renamed(h *model.Harness, at schema.At, key, to string) (*model.Harness, error) {
	return schema.Put(h, at, key, to)
}

// removed takes a record away. A wire leaves its layers and its feed too; another that is named
// somewhere stays.
func removed(h *model.Harness, at schema.At) (*model.Harness, error) {
	if len(at) == 1 && at[0].Table == "wire" {
		return h.RemoveWire(at[0].Index)
	}
	return schema.Remove(h, at)
}
