#include "core/store/names.h"

#include <QString>

namespace rig {

bool isBlank(const std::string& text)
{
    return comparable(text).empty();
}

std::string comparable(const std::string& name)
{
    return QString::fromStdString(name)
        .simplified()
        .normalized(QString::NormalizationForm_C)
        .toCaseFolded()
        .toStdString();
}

} // namespace rig
