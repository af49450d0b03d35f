#pragma once

#include <vector>

namespace rig::numbers {

struct QuadraturePoint
{
    double x = 0;
    double weight = 0;
};

// Gauss-Legendre points on [from, to], rising; exact for polynomials below degree 2 count. Needs count >= 1.
// Roots of the Legendre polynomial by Newton from Tricomi's starting values (Abramowitz & Stegun 22.16.6 and
// 25.4.29, from memory).
std::vector<QuadraturePoint> gaussLegendre(int count, double from, double to);

} // namespace rig::numbers
