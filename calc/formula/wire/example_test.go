package wire_test

import (
	"fmt"

	"contralay/calc/formula/wire"
	"contralay/model/unit"
)

func ExampleAWG_CircularMils() {
	a, _ := wire.ParseAWG("3/0")
	printed, _ := a.CircularMils()
	area, _ := a.Area()
	fmt.Printf("%.0f as ASTM prints it, %.0f by the formula\n", printed, area.CircularMils())
	// Output: 167772 as ASTM prints it, 167806 by the formula
}

func ExampleStrandedAreaAWG() {
	a, _ := wire.StrandedAreaAWG(19, 34)
	fmt.Printf("22 AWG of 19 strands: %.3f mm², %.0f circular mils\n", a, a.CircularMils())
	// Output: 22 AWG of 19 strands: 0.382 mm², 754 circular mils
}

func ExampleDrop() {
	// 4 A through 2 m of 20 AWG (9.88 Ω/1000 ft at most) that runs at 110 °C.
	v, _ := wire.Drop(4, 9.88*unit.KilometrePerKilofoot, 110, 2000)
	fmt.Printf("%.3f V\n", v)
	// Output: 0.351 V
}

func ExampleEstimateMass() {
	g, _ := wire.EstimateMass(0.3821, 0.762, 1.27, 1.70)
	fmt.Printf("%.2f g/m\n", g)
	// Output: 4.88 g/m
}

func ExampleMakeUp() {
	m, _ := wire.MakeUp([]unit.Millimetre{1.09, 1.09}, true)
	fmt.Printf("bare %.2f, over %.2f, one turn %.1f mm, loss %.4f\n", m.BareMM, m.OverMM, m.LayMM, m.LayLoss)
	// Output: bare 2.18, over 2.68, one turn 26.2 mm, loss 1.0085
}
