package learn_test

import (
	"fmt"

	"contralay/calc/formula/learn"
)

// Nine branches three layers deep, predicted and measured over in mm. One was read across
// a splice: it is named, and counts until the shop says that it does not.
func ExampleLessons() {
	var readings []learn.Reading
	for k, v := range [][2]float64{
		{7.7, 7.85}, {7.7, 7.80}, {9.2, 9.41}, {9.2, 9.32}, {6.4, 6.51}, {8.1, 9.30}, {8.1, 8.21}, {7.7, 7.88}, {6.4, 6.49},
	} {
		readings = append(readings, learn.Reading{
			Group: "over, 3 layers", Of: fmt.Sprintf("serial %d", k+1), Predicted: v[0], Measured: v[1],
		})
	}
	show := func(o learn.Options) {
		for _, l := range learn.Lessons(readings, o) {
			fmt.Printf("%s, %d readings: bias %.3f (%.3f to %.3f), spread %.3f\n", l.Group, l.N, l.Bias, l.Low, l.High, l.Spread)
			for _, out := range l.Outliers {
				fmt.Printf("%s stands %.2f spreads off, limit %.2f\n", out.Of, out.Z, l.Limit)
			}
			bias, _, ok := learn.Correction(l)
			fmt.Printf("correct by %.3f: %v\n", bias, ok)
		}
	}
	show(learn.Options{})
	show(learn.Options{Without: []string{"serial 6"}})
	// Output:
	// over, 3 layers, 9 readings: bias 0.032 (-0.002 to 0.065), spread 0.044
	// serial 6 stands 2.66 spreads off, limit 2.22
	// correct by 0.000: false
	// over, 3 layers, 8 readings: bias 0.017 (0.013 to 0.021), spread 0.004
	// correct by 0.017: true
}

// With eight readings the mean lies within 2.365 of its standard errors, 19 times in 20.
func ExampleStudent() {
	t, ok := learn.Student(0.975, 7)
	fmt.Printf("%.3f %v\n", t, ok)
	// Output: 2.365 true
}
