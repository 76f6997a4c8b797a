package words

import (
	"slices"
)

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
