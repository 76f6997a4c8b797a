package words

import (
	"fmt"
	"slices"
	"strconv"
	"strings"

	"contralay/model/unit"
)

// Few names some ids and counts the rest.
func Few(ids []string) string {
	if len(ids) > 4 {
		return strings.Join(ids[:4], ", ") + fmt.Sprintf(" and %d more", len(ids)-4)
	}
	return strings.Join(ids, ", ")
}

// Capital is a sentence with its first letter large.
func Capital(s string) string {
	if s == "" {
		return s
	}
	return strings.ToUpper(s[:1]) + s[1:]
}

// Changes is a number of changes.
func Changes(n int) string {
	if n == 1 {
		return "1 change"
	}
	return fmt.Sprintf("%d changes", n)
}

// Plural is a number of things.
func Plural(n int, one, many string) string {
	if n == 1 {
		return "1 " + one
	}
	return fmt.Sprintf("%d %s", n, many)
}

// List is texts in a sentence: "1", "1 and 2", "1, 2 and 3".
func List(all []string) string {
	if n := len(all) - 1; n > 0 {
		return strings.Join(all[:n], ", ") + " and " + all[n]
	}
	return strings.Join(all, "")
}

// Around is the entry by places on from cur, round and round.
func Around[W ~string](all []W, cur W, by int) (W, bool) {
	if len(all) == 0 {
		return "", false
	}
	at := slices.Index(all, cur)
	if at < 0 {
		return all[0], true
	}
	next := all[((at+by)%len(all)+len(all))%len(all)]
	return next, next != cur
}

// OrDash is a text, or a dash where there is none.
func OrDash(s string) string {
	if s == "" {
		return "-"
	}
	return s
}

// Trim is a number with no more digits than it needs.
func Trim(v float64) string { return strconv.FormatFloat(v, 'f', -1, 64) }

// Either is the one word where something is so, else the other.
func Either(so bool, one, other string) string {
	if so {
		return one
	}
	return other
}

// MemMark marks what rests on memory.
func MemMark(mem bool) string { return Either(mem, "~", "") }

// Grams is a mass, or a dash where part of it is not known.
func Grams(g unit.Gram, known bool) string {
	if !known {
		return "-"
	}
	return unit.Fixed(g, 0) + " g"
}
