package schema

import (
	"maps"
	"slices"
	"strconv"

	"contralay/model/visible"
)

// The forms of the kinds of key.

func same[V any](v V) any { return v }

var (
	textForm = form[string]{Key{Kind: KindText}, readText, quote, same[string]}
	idForm   = form[string]{Key{Kind: KindID}, readID, quote, same[string]}
	noteForm = form[string]{Key{Kind: KindNote}, readNote, quote, same[string]}
	flagForm = form[bool]{Key{Kind: KindFlag}, readFlag, strconv.FormatBool, same[bool]}
	eachForm = form[map[string]string]{Key{Kind: KindEach}, readEach, eachText, rawEach}
	mapForm  = form[map[string][]string]{Key{Kind: KindMap}, readMap, mapText, rawMap}
)

func wordForm[W ~string](of []W) form[W] {
	is := Key{Kind: KindChoice}
	for _, w := range of {
		is.Words = append(is.Words, string(w))
	}
	return form[W]{is, readWord(of), quoteWord[W], func(w W) any { return string(w) }}
}

func numberForm[Q ~float64](b bound) form[Q] {
	return form[Q]{Key{Kind: KindNumber, bound: b, Unit: b.unit()}, readNumber[Q](b), numberText[Q],
		func(v Q) any { return float64(v) }}
}

func countForm(lo, hi int) form[int] {
	return form[int]{Key{Kind: KindCount, Least: lo, Most: hi}, readCount(lo, hi), strconv.Itoa, func(v int) any { return int64(v) }}
}

// listForm is a list of what is written as each is.
func listForm[E any](kind Kind, each form[E]) form[[]E] {
	of := "text in quotes"
	if each.is.Kind == KindNumber {
		of = "a number"
	}
	is := each.is
	is.Kind = kind
	return form[[]E]{is, readList(each.read, of), func(list []E) string { return listText(list, each.text) }, func(list []E) any {
		out := make([]any, len(list))
		for i, e := range list {
			out[i] = each.raw(e)
		}
		return out
	}}
}

func readFlag(raw any) (bool, problem) {
	if v, ok := raw.(bool); ok {
		return v, ""
	}
	return false, bad("is "+describe(raw), "true or false")
}

func readMap(raw any) (map[string][]string, problem) {
	m, ok := raw.(map[string]any)
	if !ok {
		return nil, bad("is "+describe(raw), `a table of lists, such as { "20" = ["1", "2"] }`)
	}
	each := readList(readID, "text in quotes")
	got := make(map[string][]string, len(m))
	for _, k := range slices.Sorted(maps.Keys(m)) {
		if p := oneLine(k, true); p != "" {
			return nil, "its key " + p
		}
		list, p := each(m[k])
		if p != "" {
			return nil, problem(visible.Quoted(Short(k)) + " " + string(p))
		}
		got[k] = list
	}
	return got, ""
}

func rawMap(m map[string][]string) any {
	out := make(map[string]any, len(m))
	for k, list := range m {
		all := make([]any, len(list))
		for i, id := range list {
			all[i] = id
		}
		out[k] = all
	}
	return out
}

func readEach(raw any) (map[string]string, problem) {
	m, ok := raw.(map[string]any)
	if !ok {
		return nil, bad("is "+describe(raw), `a table of texts, such as { "22" = "24" }`)
	}
	got := make(map[string]string, len(m))
	for _, k := range slices.Sorted(maps.Keys(m)) {
		if p := oneLine(k, true); p != "" {
			return nil, "its key " + p
		}
		id, p := readID(m[k])
		if p != "" {
			return nil, problem(visible.Quoted(Short(k)) + " " + string(p))
		}
		got[k] = id
	}
	return got, ""
}

func rawEach(m map[string]string) any {
	out := make(map[string]any, len(m))
	for k, id := range m {
		out[k] = id
	}
	return out
}
