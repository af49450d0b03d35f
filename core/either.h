#pragma once

namespace rig {

// Answers std::visit() for each kind of a variant by the lambda that takes it.
template <typename... Kinds> struct Either : Kinds...
{
    using Kinds::operator()...;
};

} // namespace rig
