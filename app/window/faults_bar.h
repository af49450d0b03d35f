#pragma once

#include "app/theme/theme.h"
#include "core/review/chain_state.h"

#include <QFrame>

class QLabel;
class QPushButton;

namespace rig {

class MarkWidget;

// The line below the top bar that is shown on every page for as long as a file is open in which something
// does not stand as it was saved. It cannot be put away.
class FaultsBar : public QFrame
{
    Q_OBJECT

public:
    explicit FaultsBar(QWidget* parent = nullptr);

    void display(const std::optional<ChainState>& state);
    void setLook(const Look& look);
    // On the page that tells of them the button leads back.
    void setOnPage(bool onPage);

signals:
    void showAsked();
    void leaveAsked();

private:
    bool m_onPage = false;
    MarkWidget* m_mark = nullptr;
    QLabel* m_text = nullptr;
    QPushButton* m_show = nullptr;
};

} // namespace rig
