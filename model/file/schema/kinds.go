package schema

import (
	"fmt"
	"math"
	"slices"
	"strings"

	"contralay/model"
	"contralay/model/visible"
)

// must marks a key that a file cannot leave out.
func must[T any](k key[T]) key[T] {
	k.must = true
	return k
}

// form is how the value of a key is read, written and handed out, and what is known of it.
type form[V any] struct {
	is   Key                    // its name and whether it must be given stay empty
	read func(any) (V, problem) // of a decoded value
	text func(V) string         // as a file has it
	raw  func(V) any            // as a decoder gives it: read and raw are inverse
}

// plain is a key that is always written; optional one that may be left out.
func plain[T, V any](name string, at func(*T) *V, f form[V]) key[T] {
	return key[T]{
		name: name,
		is:   f.is,
		put: func(v *T, raw any) problem {
			got, p := f.read(raw)
			if p == "" {
				*at(v) = got
			}
			return p
		},
		get: func(v *T) string { return f.text(*at(v)) },
		raw: func(v *T) any { return f.raw(*at(v)) },
	}
}

func optional[T, V any](name string, at func(*T) *model.Opt[V], f form[V]) key[T] {
	return key[T]{
		name: name,
		is:   f.is,
		put: func(v *T, raw any) problem {
			got, p := f.read(raw)
			if p == "" {
				*at(v) = model.Some(got)
			}
			return p
		},
		get: func(v *T) string {
			if o := at(v); o.Set {
				return f.text(o.V)
			}
			return ""
		},
		raw: func(v *T) any {
			if o := at(v); o.Set {
				return f.raw(o.V)
			}
			return nil
		},
		clear: func(v *T) { *at(v) = model.Opt[V]{} },
	}
}

// held is a key that is left out where it is nil, and written as empty where it is empty: a
// list or a map.
func held[T, V any](name string, at func(*T) *V, f form[V], isNil func(V) bool) key[T] {
	k := plain(name, at, f)
	k.get = func(v *T) string {
		if isNil(*at(v)) {
			return ""
		}
		return f.text(*at(v))
	}
	k.raw = func(v *T) any {
		if isNil(*at(v)) {
			return nil
		}
		return f.raw(*at(v))
	}
	k.clear = func(v *T) {
		var none V
		*at(v) = none
	}
	return k
}

// text is any text of one line, given or not; plainText is one that is always written.
func text[T any](name string, at func(*T) *model.Opt[string]) key[T] {
	return optional(name, at, textForm)
}

func plainText[T any](name string, at func(*T) *string) key[T] { return plain(name, at, textForm) }

// id is an id, or what leads to one: of this file or of the catalogue. plainID is one that is
// always written.
func id[T any](name string, at func(*T) *model.Opt[string]) key[T] { return optional(name, at, idForm) }

func plainID[T any](name string, at func(*T) *string) key[T] { return plain(name, at, idForm) }

// note is text of more than one line.
func note[T any](at func(*T) *model.Opt[string]) key[T] { return optional("note", at, noteForm) }

// choice is one of some words; plainChoice one that is always written.
func choice[T any, W ~string](name string, at func(*T) *model.Opt[W], words ...W) key[T] {
	return optional(name, at, wordForm(words))
}

func plainChoice[T any, W ~string](name string, at func(*T) *W, words ...W) key[T] {
	return plain(name, at, wordForm(words))
}

func number[T any, Q ~float64](name string, at func(*T) *model.Opt[Q], b bound) key[T] {
	return optional(name, at, numberForm[Q](b))
}

func plainNumber[T any, Q ~float64](name string, at func(*T) *Q, b bound) key[T] {
	return plain(name, at, numberForm[Q](b))
}

// count is a whole number from lo to hi; plainCount one that is always written.
func count[T any](name string, at func(*T) *model.Opt[int], lo, hi int) key[T] {
	return optional(name, at, countForm(lo, hi))
}

func plainCount[T any](name string, at func(*T) *int, lo, hi int) key[T] {
	return plain(name, at, countForm(lo, hi))
}

func flag[T any](name string, at func(*T) *model.Opt[bool]) key[T] {
	return optional(name, at, flagForm)
}

// texts is a list of texts, ids one of ids, words one in which each is of a few words; plainIDs is
// a list of ids that is always written.
func texts[T any](name string, at func(*T) *[]string) key[T] {
	return listOf(name, at, KindTexts, textForm)
}

func ids[T any](name string, at func(*T) *[]string) key[T] { return listOf(name, at, KindIDs, idForm) }

func plainIDs[T any](name string, at func(*T) *[]string) key[T] {
	return plain(name, at, listForm(KindIDs, idForm))
}

func words[T any, W ~string](name string, at func(*T) *[]W, of ...W) key[T] {
	return listOf(name, at, KindWords, wordForm(of))
}

// numbers is a list of numbers; pair one of exactly two, rising where it must.
func numbers[T any, Q ~float64](name string, at func(*T) *[]Q, b bound) key[T] {
	return listOf(name, at, KindNumbers, numberForm[Q](b))
}

func pair[T any, Q ~float64](name string, at func(*T) *[]Q, b bound, rising bool, called string) key[T] {
	f := listForm(KindPair, numberForm[Q](b))
	f.is.Called = called
	each := f.read
	f.read = func(raw any) ([]Q, problem) {
		list, p := each(raw)
		switch {
		case p != "":
			return nil, p
		case len(list) != 2:
			return nil, bad(fmt.Sprintf("has %d numbers", len(list)), "exactly two: "+called)
		case rising && list[0] > list[1]:
			return nil, bad(fmt.Sprintf("runs from %s to %s", numberText(list[0]), numberText(list[1])), "the smaller first: "+called)
		}
		return list, ""
	}
	return held(name, at, f, func(list []Q) bool { return list == nil })
}

func listOf[T, E any](name string, at func(*T) *[]E, kind Kind, each form[E]) key[T] {
	return held(name, at, listForm(kind, each), func(list []E) bool { return list == nil })
}

// idMap is a table of lists of ids: { "20" = ["1", "2"] }.
func idMap[T any](name string, at func(*T) *map[string][]string) key[T] {
	return held(name, at, mapForm, func(m map[string][]string) bool { return m == nil })
}

// eachID is a table of ids: { "22" = "24" }.
func eachID[T any](name string, at func(*T) *map[string]string) key[T] {
	return held(name, at, eachForm, func(m map[string]string) bool { return m == nil })
}

// readNote takes any text. What would command a terminal is shown and not obeyed: older
// versions let it in, and a file that they wrote must load.
func readNote(raw any) (string, problem) {
	if v, ok := raw.(string); ok {
		return v, ""
	}
	return "", bad("is "+describe(raw), `text in quotes, such as "22"`)
}

// readText takes text of one line, readID one that may be an id.
func readText(raw any) (string, problem) { return readLine(raw, false) }

func readID(raw any) (string, problem) { return readLine(raw, true) }

func readLine(raw any, id bool) (string, problem) {
	v, p := readNote(raw)
	if p == "" {
		p = oneLine(v, id)
	}
	return v, p
}

// oneLine says what a text of one line must not hold.
func oneLine(s string, id bool) problem {
	if says, allowed := visible.Fault(s, id); says != "" {
		return bad(says, allowed)
	}
	return ""
}

// readWord takes one of a few words.
func readWord[W ~string](words []W) func(any) (W, problem) {
	return func(raw any) (W, problem) {
		if v, ok := raw.(string); ok && slices.Contains(words, W(v)) {
			return W(v), ""
		}
		var allowed []string
		for _, w := range words {
			allowed = append(allowed, string(w))
		}
		return "", bad("is "+describe(raw), `"`+strings.Join(allowed, `", "`)+`"`)
	}
}

// quoteWord is a word of a few as it is written.
func quoteWord[W ~string](w W) string { return quote(string(w)) }

// readNumber takes a whole number for a float: 12 is 12.0.
func readNumber[Q ~float64](b bound) func(any) (Q, problem) {
	return func(raw any) (Q, problem) {
		var f float64
		switch v := raw.(type) {
		case int64:
			f = float64(v)
		case float64:
			f = v
		default:
			return 0, bad("is "+describe(raw), b.says(f))
		}
		if math.IsNaN(f) || math.IsInf(f, 0) || !b.holds(f) {
			return 0, bad("is "+describe(raw), b.says(f))
		}
		if f == 0 {
			f = 0 // -0.0 is zero
		}
		return Q(f), ""
	}
}

func readCount(lo, hi int) func(any) (int, problem) {
	return func(raw any) (int, problem) {
		if v, ok := raw.(int64); ok && v >= int64(lo) && v <= int64(hi) {
			return int(v), ""
		}
		return 0, bad("is "+describe(raw), fmt.Sprintf("a whole number from %d to %d", lo, hi))
	}
}

func readList[E any](read func(any) (E, problem), of string) func(any) ([]E, problem) {
	return func(raw any) ([]E, problem) {
		rows, ok := raw.([]any)
		if !ok {
			return nil, bad("is "+describe(raw), "a list in brackets; each item must be "+of)
		}
		list := make([]E, 0, len(rows))
		for i, row := range rows {
			e, p := read(row)
			if p != "" {
				return nil, problem(fmt.Sprintf("item %d ", i+1) + string(p))
			}
			list = append(list, e)
		}
		return list, ""
	}
}

func numberText[Q ~float64](v Q) string { return floatText(float64(v)) }
