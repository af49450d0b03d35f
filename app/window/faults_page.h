#pragma once

#include "app/pages/aside_page.h"
#include "core/review/chain_state.h"

namespace rig {

class BlockColumn;

// What in the file does not stand as it was saved, fact by fact, and of what nobody can tell that. It is no
// moment of its own: the line below the top bar leads here, and Esc back to where one was.
class FaultsPage : public AsidePage
{
    Q_OBJECT

public:
    explicit FaultsPage(QWidget* parent = nullptr);

    void display(const ChainState& state);
    void showAirframe(std::optional<AirframeId>) override {} // it tells of the whole file
    void setLook(const Look& look) override;

protected:
    void focusInEvent(QFocusEvent* event) override;

private:
    QWidget* m_scroll = nullptr;
    BlockColumn* m_blocks = nullptr;
};

} // namespace rig
