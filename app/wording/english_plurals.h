#pragma once

#include <QTranslator>

namespace rig {

// The sentences are written in English with "%n reading(s)". This resolves the "(s)"; a language's own .ts
// file, installed after it, takes precedence and brings that language's plural forms.
class EnglishPlurals : public QTranslator
{
public:
    using QTranslator::QTranslator;

    bool isEmpty() const override { return false; }

    QString translate(const char*, const char* source, const char*, int n) const override
    {
        if (n < 0)
            return {};
        return QString::fromUtf8(source).replace(QLatin1String("(s)"),
                                                 n == 1 ? QLatin1String() : QLatin1String("s"));
    }
};

} // namespace rig
