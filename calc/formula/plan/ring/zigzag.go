package ring

// ZigZag adds up θ round a layer of n components in zig-zag, cnt of each size; theta is by size, size.
//
// With the components numbered thin to thick from 0, zig-zag sets side by side
// those whose numbers add up to n − 2, those that add up to n, the first and the
// last, and where n is even the middle two.
func ZigZag(cnt []int, n int, theta []float64) float64 {
	k := len(cnt)
	total := pairs(cnt, n, n-2, 0, theta) + pairs(cnt, n, n, 1, theta) + theta[place(cnt, 0)*k+place(cnt, n-1)]
	if n%2 == 0 {
		total += theta[place(cnt, n/2-1)*k+place(cnt, n/2)]
	}
	return total
}

// pairs adds up θ of those whose numbers from p on add up to sum.
func pairs(cnt []int, n, sum, p int, theta []float64) float64 {
	total, k := 0.0, len(cnt)
	i, j := 0, k-1
	endI, startJ := cnt[0], n-cnt[j] // places of size i end before endI, those of j start there
	for p < sum-p {
		q := sum - p
		for p >= endI {
			i++
			endI += cnt[i]
		}
		for q < startJ {
			j--
			startJ -= cnt[j]
		}
		run := min(endI-p, q-startJ+1, (q-p+1)/2)
		total += float64(run) * theta[i*k+j]
		p += run
	}
	return total
}

// place is the size of the component of a number.
func place(cnt []int, p int) int {
	i := 0
	for ; p >= cnt[i]; i++ {
		p -= cnt[i]
	}
	return i
}
