#include "core/numbers/dice.h"

#include <cmath>

namespace rig::numbers {

double Dice::uniform()
{
    return static_cast<double>(m_engine() >> 11) * 0x1.0p-53;
}

int Dice::below(int sides)
{
    return static_cast<int>(uniform() * sides);
}

double Dice::normal()
{
    double sum = -6;
    for (int i = 0; i < 12; ++i)
        sum += uniform();
    return sum;
}

double Dice::normalWithin(double most)
{
    double thrown = normal();
    while (std::abs(thrown) > most)
        thrown = normal();
    return thrown;
}

std::vector<double> Dice::evenNormals(int count)
{
    std::vector<double> throws;
    double sum = 0;
    for (int i = 0; i < count; ++i) {
        throws.push_back(normal());
        sum += throws.back();
    }
    double squares = 0;
    for (double& one : throws) {
        one -= sum / count;
        squares += one * one;
    }
    const double stretch = count > 1 ? std::sqrt((count - 1) / squares) : 0;
    for (double& one : throws)
        one *= stretch;
    return throws;
}

} // namespace rig::numbers
