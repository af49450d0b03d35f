#pragma once

#include "app/wording/english_plurals.h"

namespace rig {

// No language: every sentence two fifths longer and between marks, so that pictures and tests show where a
// longer language would be cut, and what was never given to a translator. Installed over EnglishPlurals.
class WideWords : public QTranslator
{
public:
    using QTranslator::QTranslator;

    bool isEmpty() const override { return false; }
    QString translate(const char* context, const char* source, const char* note, int n) const override;

private:
    EnglishPlurals
        m_plurals; // one that began and ended in translate() would wait for ever: those installed are locked
};

} // namespace rig
