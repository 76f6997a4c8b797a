package name

import (
	"slices"
	"strconv"
	"strings"

	"contralay/model/catalogue"
	"contralay/model/wirelist/value"
)

// mostSpread is how many cavities a range may have; more is no range that a person wrote
// (no source).
const mostSpread = 64

// Spread gives the cavities of a range: "10-12", "A16-A18", "A16-18", "10 to 12", and
// "N-R" of an insert, whose letters are not all there; without one "A..C", where no letter
// is in it that connectors leave out. sure says that it can be nothing
// else; "10-12" can be the name of one. ok is false where it is no range.
func Spread(pin string, ins *catalogue.Insert) (all []string, sure, ok bool) {
	if IsCavity(pin) {
		return nil, false, false // most are; they are not looked at further
	}
	f := strings.ReplaceAll(strings.ReplaceAll(strings.ReplaceAll(pin, "–", "-"), "—", "-"), "…", "..")
	a, b := "", ""
	for _, mark := range []string{" to ", " thru ", " through ", " bis ", "..", "-"} {
		if x, y, found := strings.Cut(f, mark); found {
			a, b, sure = strings.TrimSpace(x), strings.TrimLeft(strings.TrimSpace(y), "."), mark != "-"
			break
		}
	}
	if !IsCavity(a) || !IsCavity(b) {
		return nil, false, false
	}
	if ins != nil {
		i, j := slices.Index(ins.Cavities, a), slices.Index(ins.Cavities, b)
		if i >= 0 && j > i && j-i < mostSpread {
			return slices.Clone(ins.Cavities[i : j+1]), true, true
		}
		return nil, false, false
	}
	if len(a) == 1 && len(b) == 1 && value.IsLetter(a[0]) && value.IsLetter(b[0]) && a < b &&
		strings.ToUpper(a) == a == (strings.ToUpper(b) == b) {
		for c := a[0]; c <= b[0]; c++ {
			if strings.IndexByte("ioqIOQ", c) >= 0 {
				return nil, false, false // some connectors have no such cavity
			}
			all = append(all, string(c))
		}
		return all, sure, true
	}
	l1, d1, t1 := cavityParts(a)
	l2, d2, t2 := cavityParts(b)
	m, err1 := strconv.Atoi(d1)
	n, err2 := strconv.Atoi(d2)
	if err1 != nil || err2 != nil || t1 != "" || t2 != "" || l2 != "" && l2 != l1 || m >= n || n-m >= mostSpread {
		return nil, false, false
	}
	for k := m; k <= n; k++ {
		all = append(all, l1+padded(k, d1))
	}
	return all, sure || l1 != "" && l1 == l2, true
}

// padded writes a number with as many digits as the first of its range, "08".
func padded(n int, like string) string {
	s := strconv.Itoa(n)
	if strings.HasPrefix(like, "0") && len(s) < len(like) {
		s = strings.Repeat("0", len(like)-len(s)) + s
	}
	return s
}

// rangeSigns makes a dash of what stands between the ends of a range.
var rangeSigns = strings.NewReplacer("–", "-", "...", "-", "…", "-", "..", "-", " to ", "-", " bis ", "-")

// LooksLikeRange reports whether pin is two numbers or two single letters with a dash between,
// rising.
func LooksLikeRange(pin string) bool {
	if IsCavity(pin) {
		return false
	}
	if _, _, ok := Spread(pin, nil); ok {
		return true
	}
	a, b, ok := strings.Cut(rangeSigns.Replace(pin), "-")
	a, b = strings.TrimSpace(a), strings.TrimSpace(b)
	return ok && len(a) == 1 && len(b) == 1 && value.IsLetter(a[0]) && value.IsLetter(b[0]) && a < b
}
