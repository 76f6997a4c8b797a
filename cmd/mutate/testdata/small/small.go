// Package small is what the tests of mutate change: it has each form of a function that a copy could spoil.
package small

const least = 4

// AtLeast is n, or the least. Whether the least itself is raised to the least, nobody can tell.
func AtLeast(n int) int {
	if n < least {
		return least
	}
	return n
}

// Half takes a parameter again, in the same scope.
func Half(n int) (err error) {
	n, err = half(n)
	m, err := half(n)
	_ = m
	return err
}

func half(n int) (int, error) {
	if n%2 != 0 {
		return 0, odd{n}
	}
	return n / 2, nil
}

type odd struct{ n int }

func (o odd) Error() string { return "odd" }

// Find has a label, and a parameter without a name.
func Find(all [][]int, _ string) (at int) {
outer:
	for i, row := range all {
		for _, x := range row {
			if x == 0 {
				at = i
				break outer
			}
		}
	}
	return
}

// Sum is generic and takes any number.
func Sum[T int | float64](some ...T) T {
	var s T
	for _, x := range some {
		s += x
	}
	return s
}

// Unseen is called by no test.
func Unseen() int { return 7 }

// Pick is a function outside of functions.
var Pick = func(a, b int) int { return max(a, b) }
