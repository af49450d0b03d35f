#pragma once

#include "app/pages/page.h"

namespace rig {

// Holds the place of a page that a later version brings, and says in one sentence what will stand there.
class LaterPage : public Page
{
    Q_OBJECT

public:
    LaterPage(const QString& title, const QString& sentence, QWidget* parent = nullptr);

    void showAirframe(std::optional<AirframeId>) override {}
    void setLook(const Look&) override {}
};

} // namespace rig
