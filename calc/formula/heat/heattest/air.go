package heattest

import "math"

const (
	kelvin   = 273.15
	boltz    = 5.670374419e-8 // Stefan and Boltzmann, W/(m² K⁴)
	gravity  = 9.80665        // m/s²
	shine    = 0.9            // emissivity of a sheath
	copper   = 0.00393        // 1/K, of resistance, from 20 °C
	kInsul   = 0.24           // W/(m K), insulation of a wire
	kSheath  = 0.2            // W/(m K)
	kCopper  = 390.0          // W/(m K); only what is left of it between a cell and its conductor
	tableMin = 250.0          // K, the first row of airTable
	tableBy  = 50.0           // K, from row to row
)

// airTable is dry air at one atmosphere from 250 K up, by 50 K: kinematic viscosity in
// 10⁻⁶ m²/s, conductivity in 10⁻³ W/(m K), Prandtl number. Source: the table of air at
// atmospheric pressure that textbooks of heat transfer print (Incropera, table A.4), from
// memory, not verified.
var airTable = [][3]float64{
	{11.44, 22.3, 0.720}, {15.89, 26.3, 0.707}, {20.92, 30.0, 0.700}, {26.41, 33.8, 0.690},
	{32.39, 37.3, 0.686}, {38.79, 40.7, 0.684}, {45.57, 43.9, 0.683}, {52.69, 46.9, 0.685},
}

// airAt reads the table at t in °C, a parabola through the three nearest rows.
func airAt(t float64) (nu, k, pr float64) {
	x := (t + kelvin - tableMin) / tableBy
	x = math.Min(math.Max(x, 0), float64(len(airTable)-1))
	m := min(max(int(math.Round(x)), 1), len(airTable)-2)
	x -= float64(m)
	var v [3]float64
	for i := range v {
		a, b, c := airTable[m-1][i], airTable[m][i], airTable[m+1][i]
		v[i] = b + x*(c-a)/2 + x*x*(a-2*b+c)/2
	}
	return v[0] * 1e-6, v[1] * 1e-3, v[2]
}

// film is what a surface gives to still air at sea level in all, W/(m² K): natural
// convection from a level cylinder of d mm and radiation to walls as warm as the air.
//
//	Nu = {0.60 + 0.387 Ra^(1/6) / [1 + (0.559/Pr)^(9/16)]^(8/27)}²
//
// Source: Churchill and Chu 1975, from memory; properties at the mean of surface and air.
func film(d, surface, air float64) float64 {
	mean := (surface + air) / 2
	nu, k, pr := airAt(mean)
	m := d / 1000
	ra := gravity / (mean + kelvin) * math.Abs(surface-air) * m * m * m / (nu * nu) * pr
	root := 0.60 + 0.387*math.Pow(ra, 1.0/6)/math.Pow(1+math.Pow(0.559/pr, 9.0/16), 8.0/27)
	s, a := surface+kelvin, air+kelvin
	return root*root*k/m + shine*boltz*(s*s+a*a)*(s+a)
}
