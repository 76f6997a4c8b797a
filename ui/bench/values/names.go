package values

import (
	"slices"

	"contralay/model"
	"contralay/model/edit"
	"contralay/model/file/schema"
)

// Ids and removals touch more than one record: these are the two places where such edits are made,
// as the pages of the tree make them.

// renamed gives a record another id, everywhere that it is named; says is what keeps the old one.
func renamed(h *model.Harness, at schema.At, key, to string) (out *model.Harness, says []string, err error) {
	if noun := edit.Noun(at.Table()); key == "id" && slices.Contains(edit.Nouns, noun) {
		return edit.Rename(h, noun, idOf(h, at), to)
	}
	out, err = schema.Put(h, at, key, to)
	return out, nil, err
}

// removed takes a record away; says is what is left without an end or a way.
func removed(h *model.Harness, at schema.At) (out *model.Harness, says []string, err error) {
	noun := edit.Noun(at.Table())
	if !slices.Contains(edit.Nouns, noun) {
		out, err = schema.Remove(h, at)
		return out, nil, err
	}
	return edit.Remove(h, noun, idOf(h, at))
}
